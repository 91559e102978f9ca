-- Names and firms of visitors, outside the ledger: a row that is deleted leaves the record whole, and the visitor a number.
-- Kept by the entry that made the visitor known; no projection, so that a rebuild leaves it alone.
create table visitor_name (
    known_by uuid primary key,
    full_name varchar(200) not null,
    firm varchar(200) not null,
    salt varchar(64) not null
);
