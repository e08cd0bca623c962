-- That a home left, for a while, for whoever belonged to it: that it left and when, nothing of it.
CREATE TABLE people.parted (
    account uuid   NOT NULL REFERENCES people.account ON DELETE CASCADE,
    home    uuid   NOT NULL REFERENCES people.home ON DELETE CASCADE,
    at      bigint NOT NULL,
    PRIMARY KEY (account, home)
);
