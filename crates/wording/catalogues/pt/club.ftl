club-homes = Casas que compartilham com o clube
club-homes-how = Aqui estão só as que consentem neste momento. Cada olhar é anotado para quem cuida da casa.
club-no-homes = Nenhuma casa compartilha nada neste momento.
club-purpose = { $purpose ->
    [coach_figures] números
    [coach_log] o registro
   *[other] sons dos apertos
}
club-open = Abrir
club-to-desk = Abrir sua mesa
club-link = Para as casas
club-link-what = Dê este link a quem cuida de uma casa. Não é segredo e não abre nada: a pessoa é perguntada, finalidade por finalidade, o que cada coach do clube pode ver.
club-own-link-what = Este pergunta só por você:
club-members = Quem faz parte do clube
club-end = Encerrar
club-invited = Convite como: { $role }, até { $until }
club-invite-coach = Convidar um coach
club-invite-keeper = Convidar para cuidar do clube
club-back = Voltar ao clube
club-not-by-role = O seu papel aqui não vai tão longe. Fale com quem cuida do clube.
