-- The truth of the works. Rows are added, never changed; all other tables can be made again from these.
create table stream (
    id uuid primary key,
    subject varchar(120) not null unique,
    last_number bigint not null,
    last_hash varchar(64) not null,
    last_at timestamp(6) with time zone not null
);

create table entry (
    id uuid primary key,
    stream uuid not null references stream (id) on delete restrict,
    number bigint not null check (number > 0),
    kind varchar(80) not null,
    said text not null,
    hash varchar(64) not null,
    constraint entry_number_in_stream unique (stream, number)
);

create table evidence (
    sha256 varchar(64) primary key,
    media_type varchar(100) not null,
    size_bytes bigint not null,
    content bytea not null
);
