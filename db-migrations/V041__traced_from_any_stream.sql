-- A vehicle can be named by an entry of another stream: a consignment note stands in the stream of its container. "said_in" is
-- that stream's name; null where the entry stands in the vehicle's own.
alter table traced add column said_in varchar(100);

create index traced_work_order on traced (work_order, trace_sort);
create index traced_sort on traced (trace_sort, code);

-- By which version of the program the rows of a read table were made last: a newer one makes them again at its first start. No
-- projection: nothing of it is on record.
create table made_by (
    tables varchar(40) primary key,
    version integer not null
);
