-- Looks tell the page, and a used invitation who took it.
ALTER TABLE people.look ADD COLUMN page text NOT NULL DEFAULT '';
ALTER TABLE people.look DROP CONSTRAINT look_pkey;
ALTER TABLE people.look ADD PRIMARY KEY (home, account, capability, page, hour);

ALTER TABLE people.invitation ADD COLUMN taken_by uuid REFERENCES people.account ON DELETE SET NULL;
