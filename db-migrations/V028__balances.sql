-- Searches for a better balance of work, each kept from its begin, so that one that a restart ended is told as interrupted. No
-- projection: what is accepted is on record as the drafts that it made.
create table balance_search (
    id uuid primary key,
    asked_by varchar(80) not null,
    begun timestamp(6) with time zone not null,
    ended timestamp(6) with time zone,
    standing varchar(20) not null,
    question text not null,
    outcome text
);

create index balance_search_begun on balance_search (begun);
