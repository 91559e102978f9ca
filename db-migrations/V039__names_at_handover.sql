-- Names and firms of people of operators who were instructed, agreed snags or signed a receipt, outside the ledger: a row that is
-- deleted leaves the record whole, and the person a token. Kept by the entry that named them; no projection, so that a rebuild
-- leaves it alone. All of one vehicle are found by its order.
create table outside_name (
    id varchar(60) primary key,
    work_order varchar(40) not null,
    full_name varchar(200) not null,
    firm varchar(200) not null,
    salt varchar(64) not null
);

create index outside_name_order on outside_name (work_order);
