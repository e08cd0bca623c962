# Numbers with their units. $value is written already, with its decimals.
unit-kg = { $value } kg
unit-lb = { $value } lb
unit-kcal = { $value } kcal
unit-seconds = { $value } s
unit-percent = { $value }%
unit-a-day = { $value } a day
unit-a-minute = { $value } a minute
unit-month-of-year = { $month } { $year }
unit-colon = { $what }: { $said }
unit-apart = { "; " }
