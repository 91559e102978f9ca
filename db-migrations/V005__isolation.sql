-- Read tables of what vehicles must know of each other: a lock hangs at one vehicle, a tester is in one pair of hands.
create table lock_on (
    id varchar(200) primary key,
    work_order varchar(80) not null,
    lock_number varchar(80) not null,
    constraint one_vehicle_a_lock unique (lock_number)
);

create table last_proof (
    work_order varchar(80) primary key,
    tester varchar(80) not null
);

create index last_proof_tester on last_proof (tester);
