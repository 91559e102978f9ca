-- The order that a vehicle’s order carries on: so that lists and figures of the line tell a vehicle that came back from a new one.
-- The rows are made again at the first start (order.OrderTables).
alter table work_order add column earlier varchar(40);
