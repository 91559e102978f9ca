-- What is to be told to integrators' addresses, and what came of it. No read table: whether something was told is known here alone, so
-- a rebuild leaves it as it is.
create table milestone_delivery (
    id varchar(60) primary key,
    webhook integer not null,
    work_order varchar(40) not null,
    milestone varchar(20) not null,
    entry uuid not null,
    entry_number bigint not null,
    reached_at timestamp(6) with time zone not null,
    state varchar(20) not null,
    tries integer not null,
    next_at timestamp(6) with time zone not null,
    last_at timestamp(6) with time zone,
    fault varchar(20),
    answered integer
);

create index milestone_delivery_due on milestone_delivery (state, next_at);
create index milestone_delivery_latest on milestone_delivery (reached_at);

-- What deliveries are signed with. Outside the ledger, since it is to be forgotten when it is replaced.
create table webhook_secret (
    webhook integer primary key,
    secret varchar(80) not null,
    made_at timestamp(6) with time zone not null
);
