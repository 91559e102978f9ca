-- When a vehicle came onto the line first, and when it left it as finished: measures of a period ask only for the vehicles that were
-- there in it. In rows made before this both come with the next rebuild; until then such a vehicle is told by since.
alter table work_order add column came_on_line timestamp(6) with time zone;
alter table work_order add column left_line timestamp(6) with time zone;

create index work_order_left_line on work_order (left_line);

-- Lists by phase, such as who is on the line, must not look through what was handed over in ten years.
create index work_order_phase on work_order (phase, since);
