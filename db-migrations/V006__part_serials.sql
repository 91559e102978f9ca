-- Read table of the parts on each vehicle by their serials. The unique key says that a part is on one vehicle.
create table part_serial (
    id varchar(240) primary key,
    work_order varchar(80) not null,
    part varchar(80) not null,
    serial_number varchar(60) not null,
    constraint one_vehicle_a_part unique (part, serial_number)
);
