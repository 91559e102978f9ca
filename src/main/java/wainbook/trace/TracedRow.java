package wainbook.trace;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import wainbook.ledger.Entry;

/** What an entry of a work order names. */
@Entity
@Table(name = "traced")
class TracedRow extends PanacheEntityBase {

    private static final String LIKE = "code like ?1 escape '!'";

    @Id
    public String id;

    public String workOrder;
    public long entryNumber;

    @Enumerated(EnumType.STRING)
    public Mention.Sort traceSort;

    public String code;
    public String shown;
    public Instant at;

    static TracedRow of(Entry entry, Mention mention) {
        var row = new TracedRow();
        row.workOrder = entry.subject().code();
        row.entryNumber = entry.number();
        row.traceSort = mention.sort();
        row.code = mention.code();
        row.shown = mention.shown().length() > Mention.LONGEST
                ? mention.shown().substring(0, Mention.LONGEST)
                : mention.shown();
        row.id = row.workOrder + "/" + row.entryNumber + "/" + row.traceSort + "/" + row.code;
        row.at = entry.moment().at();
        return row;
    }

    /** A work order with how many places of its record fit. */
    record Hit(String workOrder, long places) {}

    static List<Hit> orders(String pattern, int from, int most) {
        return getEntityManager()
                .createQuery(
                        "select workOrder, count(distinct entryNumber) from TracedRow where " + LIKE
                                + " group by workOrder order by max(at) desc, workOrder",
                        Object[].class)
                .setParameter(1, pattern)
                .setFirstResult(from)
                .setMaxResults(most)
                .getResultStream()
                .map(columns -> new Hit((String) columns[0], (long) columns[1]))
                .toList();
    }

    static long orders(String pattern) {
        return getEntityManager()
                .createQuery("select count(distinct workOrder) from TracedRow where " + LIKE, Long.class)
                .setParameter(1, pattern)
                .getSingleResult();
    }

    /** The newest first. */
    static List<TracedRow> places(String pattern, String workOrder, int most) {
        return find(LIKE + " and workOrder = ?2 order by entryNumber desc, traceSort, code", pattern, workOrder)
                .page(0, most)
                .list();
    }
}
