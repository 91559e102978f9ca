-- Read table for the milestones that orders reached. A row is a function of its order's stream. Records made before this come with the
-- next rebuild.
create table milestone (
    id varchar(80) primary key,
    work_order varchar(40) not null,
    milestone varchar(20) not null,
    reached_at timestamp(6) with time zone not null,
    entry uuid not null,
    entry_number bigint not null
);

create index milestone_reached on milestone (milestone, reached_at);
create index milestone_order on milestone (work_order);
