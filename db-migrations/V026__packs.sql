-- Read table for the list of packs, for the lots that a pack in quarantine holds, and for what is due. A row is a function of
-- the stream of its pack.
create table pack (
    serial varchar(40) primary key,
    pack_type varchar(80),
    lot varchar(80),
    place varchar(80),
    charge_percent numeric(8, 3),
    looked_at timestamp(6) with time zone,
    accepted boolean not null,
    quarantined boolean not null,
    set_aside boolean not null,
    holds_lot boolean not null,
    alarmed boolean not null,
    outside_window boolean not null,
    next_watch timestamp(6) with time zone,
    gone boolean not null,
    since timestamp(6) with time zone
);

create index pack_lot on pack (lot, holds_lot);
