-- Nothing ever read these tables; pages are computed from the log itself. The room they took is used again by the log.
DROP TABLE day_tally;
DROP TABLE fact;
DROP TABLE household_zone;
