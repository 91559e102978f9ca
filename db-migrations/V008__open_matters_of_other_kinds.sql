-- Read tables for the list of open matters: help calls that are not settled, work given to a later stage, and documents
-- of vehicles handed over. Rows of the last two say where to look; whether a matter is open follows from the record.
create table open_help_call (
    id varchar(120) primary key,
    work_order varchar(80) not null,
    call_number integer not null,
    asked_for varchar(40) not null,
    place varchar(80),
    words text,
    work_stands boolean not null,
    called_by varchar(80) not null,
    since timestamp(6) with time zone not null,
    answered_by varchar(80)
);

create index open_help_call_since on open_help_call (since);

create table deferred_work (
    entry_id uuid primary key,
    work_order varchar(80) not null
);

create index deferred_work_order on deferred_work (work_order);

create table document_after_handover (
    id varchar(120) primary key,
    work_order varchar(80) not null,
    is_open boolean not null
);

create index document_after_handover_order on document_after_handover (work_order);
