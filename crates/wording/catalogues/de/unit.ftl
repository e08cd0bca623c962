# Numbers with their units. $value is written already, with its decimals.
unit-kg = { $value } kg
unit-lb = { $value } lb
unit-kcal = { $value } kcal
unit-seconds = { $value } s
unit-percent = { $value }{ "\u00A0" }%
unit-a-day = { $value } am Tag
unit-a-minute = { $value } je Minute
unit-month-of-year = { $month } { $year }
unit-colon = { $what }: { $said }
unit-apart = { "; " }
