-- Searches for a better order of entry, each kept from its begin, so that one that a restart ended is told as interrupted. No
-- projection: nothing of it is on record.
create table entry_search (
    id uuid primary key,
    asked_by varchar(80) not null,
    begun timestamp(6) with time zone not null,
    ended timestamp(6) with time zone,
    standing varchar(20) not null,
    outcome text
);

create index entry_search_begun on entry_search (begun);
