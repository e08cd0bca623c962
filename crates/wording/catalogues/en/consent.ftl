# The words in which a home is asked for consent. Events name them by purpose and version: what was once asked stays as it
# was. New words are new messages with the next number.
consent-coach-figures-1 = { $who } sees your home’s figures: Today, Evidence and the other pages that count. Not the log, not who noted what, and no sounds.
consent-coach-log-1 = { $who } reads your log: every entry, when it was, and who noted it. No sounds.
consent-coach-snippets-1 = { $who } hears the short sounds kept of presses at your board. Voices in the room can be heard on them.
consent-norms-1 = Your figures count in the norms of this server: one home among many, without names. Once you take this back, no norms made later count them.
consent-research-1 = Your records may be given to studies that an ethics board has approved, without names and without sounds. Once you take this back, they are given to no further study. What a study already has cannot be fetched back.
consent-ends-1 = This is off until you switch it on. You can take it back at any time, and it ends at once.
consent-coach-figures-2 = { $who } sees your home’s pages with figures: Today, Likes, Words, Evidence, Days, Patterns, checks, trials of a change, sheets to print. There stand your word cards with what you wrote on them, your pictures, the recordings of your buttons, the dates, and who began or scored a test. Not the log entry by entry, and no sounds kept of presses. { $who } may also write to you: propose a plan, a word or a test, leave a note, ask. You accept, decline or answer.
