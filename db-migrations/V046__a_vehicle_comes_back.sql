-- A vehicle may have one order after the other. The newest holds it, so that it has one at a time.
alter table work_order drop constraint one_order_a_vehicle;
alter table work_order add column vehicle_now varchar(17);
update work_order set vehicle_now = vin;
alter table work_order add constraint one_order_a_vehicle unique (vehicle_now);
