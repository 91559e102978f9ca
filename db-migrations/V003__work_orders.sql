-- Read table of work orders. The unique key says that a place for one vehicle holds one vehicle.
create table work_order (
    number varchar(80) primary key,
    operator varchar(200) not null,
    vehicle_kind varchar(80) not null,
    variant varchar(80) not null,
    promised_on date not null,
    phase varchar(40) not null,
    stage varchar(80),
    place varchar(80),
    occupies varchar(80),
    since timestamp(6) with time zone not null,
    vin varchar(17),
    registration varchar(20),
    holds integer not null,
    constraint one_vehicle_a_station unique (occupies),
    constraint one_order_a_vehicle unique (vin)
);
