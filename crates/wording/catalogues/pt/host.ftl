# On a server of many homes: what stands in the way.
host-not-signed-in = Entre primeiro.
host-not-fresh = Para isso é preciso entrar de novo: mostre mais uma vez que é você.
host-not-by-role = O seu papel aqui não vai tão longe. Fale com quem cuida da casa.
host-not-today = Hoje não é um dos dias combinados com você.
host-not-your-name = Isto nomeia outra conta que não a sua.
host-not-valid = Este link ou código não vale, ou não vale mais. Peça um novo.
host-last-keeper = Antes outra pessoa precisa cuidar disto.
host-taken = Isto já está ocupado.
host-left = Esta casa saiu do servidor. Nada dela é aceito de novo.
host-public-url = O endereço público { $url } precisa começar com https:// ou ser http://localhost: as chaves de acesso exigem isso.
host-cannot-open = Não foi possível abrir o banco de dados: { $why }
host-no-mail = Não foi possível enviar e-mail: { $why }
host-part = Este papel não pode ser assim: quem cuida por dias precisa de dias e de uma pessoa da casa; quem observa, de uma pessoa.
host-email = Isto não é um endereço de e-mail.
host-away = O banco de dados do servidor não responde agora. Tente de novo daqui a pouco.
host-other-name = Este servidor só se abre em { $url }.
