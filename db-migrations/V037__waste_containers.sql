-- Read table for the list of waste containers and for what stands too long; the code of a note is given once. A row is a function
-- of the stream of its container.
create table waste_container (
    label varchar(20) primary key,
    code varchar(12) not null,
    hazardous boolean not null,
    place varchar(80) not null,
    capacity numeric(12, 3) not null,
    measure varchar(2) not null,
    filled numeric(12, 3) not null,
    mass_kg numeric(12, 3) not null,
    vehicles integer not null,
    since timestamp(6) with time zone not null,
    ask_after_days integer not null,
    is_sealed boolean not null,
    collected_at timestamp(6) with time zone,
    note_code varchar(40),
    note_kg numeric(12, 3),
    is_returned boolean not null,
    constraint waste_note_once unique (note_code)
);

create index waste_container_code on waste_container (code, collected_at);
