package wainbook.line.milestone;

import io.quarkus.hibernate.orm.panache.PanacheQuery;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrderRow;

/**
 * Orders as a list of milestones is asked for.
 *
 * @param search in number or operator
 * @param milestone that must have been reached, in the span if one is given
 * @param until not included
 */
public record OrdersPassed(
        String search,
        Optional<WorkOrder.Phase> phase,
        Optional<Milestone> milestone,
        Optional<Instant> from,
        Optional<Instant> until) {

    /** Those promised last come first. */
    public PanacheQuery<WorkOrderRow> find() {
        Map<String, Object> with = new LinkedHashMap<>();
        var where = new StringBuilder("locate(lower(:search), lower(concat(number, ' ', operator))) > 0");
        with.put("search", search);
        phase.ifPresent(one -> {
            where.append(" and phase = :phase");
            with.put("phase", one);
        });
        if (milestone.isPresent() || from.isPresent() || until.isPresent()) {
            where.append(" and number in (select m.workOrder from MilestoneRow m where 1 = 1");
            milestone.ifPresent(one -> {
                where.append(" and m.milestone = :milestone");
                with.put("milestone", one);
            });
            from.ifPresent(one -> {
                where.append(" and m.reachedAt >= :from");
                with.put("from", one);
            });
            until.ifPresent(one -> {
                where.append(" and m.reachedAt < :until");
                with.put("until", one);
            });
            where.append(')');
        }
        return WorkOrderRow.find(where + " order by promisedOn desc, number desc", with);
    }
}
