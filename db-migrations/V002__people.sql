-- Names and passwords lie outside the ledger, so that a name can be deleted without breaking the record.
create table person_name (
    number varchar(80) primary key,
    full_name varchar(200) not null,
    salt varchar(64) not null
);

create table sign_in (
    user_name varchar(80) primary key,
    person varchar(80) not null unique,
    password_hash varchar(100) not null
);

create table api_token (
    token_hash varchar(64) primary key,
    person varchar(80) not null,
    title varchar(80) not null,
    made_at timestamp(6) with time zone not null
);

-- Read tables, made from the ledger.
create table person (
    number varchar(80) primary key,
    roles varchar(400) not null,
    has_left boolean not null
);

create table instrument (
    code varchar(80) primary key,
    kind varchar(80) not null,
    title varchar(200) not null,
    due date,
    withdrawn boolean not null
);
