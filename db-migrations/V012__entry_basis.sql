-- Read table for containment: what each entry of a work order rests on, so that every reading made with an instrument, from
-- a lot, under a revision or on a competence is found at once. One row an entry; "proved_on" is the known source that a
-- tester was proved on.
create table entry_basis (
    entry_id uuid primary key,
    work_order varchar(80) not null,
    entry_number bigint not null,
    at timestamp(6) with time zone not null,
    person varchar(80) not null,
    instrument varchar(80),
    proved_on varchar(80),
    sheet varchar(80),
    revision integer,
    item varchar(80),
    competence varchar(80),
    part varchar(80),
    lot varchar(120)
);

create index entry_basis_instrument on entry_basis (instrument, at);
create index entry_basis_proved_on on entry_basis (proved_on, at);
create index entry_basis_sheet on entry_basis (sheet, revision);
create index entry_basis_person on entry_basis (person, competence, at);
create index entry_basis_lot on entry_basis (lot);
