-- Read table for permits that were written on paper; a row is a function of the stream of its vehicle.
create table paper_permit (
    id varchar(100) primary key,
    vehicle varchar(80) not null,
    form varchar(20) not null,
    issued_at timestamp(6) with time zone not null,
    still_open boolean not null
);
