# Numbers with their units. $value is written already, with its decimals.
unit-kg = { $value } kg
unit-lb = { $value } lb
unit-kcal = { $value } kcal
unit-seconds = { $value } s
unit-percent = { $value }{ "\u202F" }%
unit-a-day = { $value } par jour
unit-a-minute = { $value } par minute
unit-month-of-year = { $month } { $year }
unit-colon = { $what }{ "\u00A0" }: { $said }
unit-apart = { "\u202F; " }
