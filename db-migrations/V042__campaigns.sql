-- Read tables for campaigns, and for the vehicles in their scope. Each row is a function of the stream of its campaign.
create table campaign (
    number varchar(20) primary key,
    title varchar(120) not null,
    hazard varchar(20) not null,
    opened_at timestamp(6) with time zone not null,
    opened_by varchar(80) not null,
    is_closed boolean not null,
    closed_at timestamp(6) with time zone
);

create table campaign_vehicle (
    id varchar(100) primary key,
    campaign varchar(20) not null,
    work_order varchar(80) not null,
    operator varchar(200) not null,
    is_out boolean not null,
    is_settled boolean not null,
    asked_out_by varchar(80),
    letters integer not null,
    rework varchar(80)
);

create index campaign_vehicle_campaign on campaign_vehicle (campaign, work_order);
create index campaign_vehicle_order on campaign_vehicle (work_order);
create index campaign_vehicle_rework on campaign_vehicle (rework);
