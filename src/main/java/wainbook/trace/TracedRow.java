package wainbook.trace;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.TypedQuery;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.Subject;

/** What an entry names of a work order. */
@Entity
@Table(name = "traced")
public class TracedRow extends PanacheEntityBase {

    private static final String LIKE = "code like ?1 escape '!'";

    private static final String FITS = "code like :pattern escape '!'";

    /** Entries of several streams may have the same number. */
    private static final String ENTRY = "concat(coalesce(saidIn, ''), '/', cast(entryNumber as String))";

    @Id
    public String id;

    public String workOrder;
    public long entryNumber;

    @Enumerated(EnumType.STRING)
    public Mention.Sort traceSort;

    public String code;
    public String shown;
    public Instant at;

    /** The stream that it was said in; null for the work order's own. */
    public String saidIn;

    static TracedRow of(Entry entry, Mentions.Of named) {
        Mention mention = named.mention();
        var row = new TracedRow();
        boolean own = entry.subject().equals(Subject.workOrder(named.order()));
        row.workOrder = named.order();
        row.saidIn = own ? null : entry.subject().toString();
        row.entryNumber = entry.number();
        row.traceSort = mention.sort();
        row.code = mention.code();
        row.shown = mention.shown();
        row.id = (own ? "" : row.saidIn + "/") + row.workOrder + "/" + row.entryNumber + "/" + row.traceSort + "/"
                + row.code;
        row.at = entry.moment().at();
        return row;
    }

    public Subject stream() {
        return saidIn == null ? Subject.workOrder(workOrder) : Subject.parse(saidIn);
    }

    /** Tells its entry from all others. */
    String entry() {
        return stream() + "/" + entryNumber;
    }

    /** A work order with how many places of its record fit. */
    record Hit(String workOrder, long places) {}

    /** A thing that a work order's record names, however often. */
    record Thing(Mention.Sort sort, String shown, long places, Instant first, Instant last) {}

    /** What a code in a search may begin with. */
    static String beginning(String code) {
        return exactly(code) + "%";
    }

    static String exactly(String code) {
        return code.replaceAll("([!%_])", "!$1");
    }

    /**
     * What a search looks for.
     *
     * @param pattern of a code
     * @param joints entries on joints that it means besides
     */
    record Search(String pattern, Optional<JointRevisions.Sought> joints) {

        private String where() {
            return joints.map(sought -> "(" + FITS + " or (traceSort = :joints and at >= :from"
                            + (sought.until().isPresent() ? " and at < :until" : "")
                            + (sought.joint().isPresent() ? " and code = :joint" : "") + "))")
                    .orElse(FITS);
        }
    }

    private static <T> TypedQuery<T> asked(Search search, String select, String rest, Class<T> answer) {
        TypedQuery<T> query = getEntityManager()
                .createQuery(select + " from TracedRow t where " + search.where() + rest, answer)
                .setParameter("pattern", search.pattern());
        search.joints().ifPresent(sought -> {
            query.setParameter("joints", Mention.Sort.JOINT).setParameter("from", sought.from());
            sought.until().ifPresent(until -> query.setParameter("until", until));
            sought.joint().ifPresent(joint -> query.setParameter("joint", joint));
        });
        return query;
    }

    static List<Hit> orders(Search search, int from, int most) {
        return asked(
                        search,
                        "select workOrder, count(distinct " + ENTRY + ")",
                        " group by workOrder order by max(at) desc, workOrder",
                        Object[].class)
                .setFirstResult(from)
                .setMaxResults(most)
                .getResultStream()
                .map(columns -> new Hit((String) columns[0], (long) columns[1]))
                .toList();
    }

    static long orders(Search search) {
        return asked(search, "select count(distinct workOrder)", "", Long.class).getSingleResult();
    }

    /** The newest first. */
    static List<TracedRow> places(Search search, String workOrder, int most) {
        return asked(
                        search,
                        "select t",
                        " and workOrder = :order order by at desc, entryNumber desc, traceSort, code",
                        TracedRow.class)
                .setParameter("order", workOrder)
                .setMaxResults(most)
                .getResultList();
    }

    /** Every entry on a joint that a work order's record has. */
    static List<TracedRow> joints(String workOrder) {
        return list("workOrder = ?1 and traceSort = ?2 order by code, at, entryNumber", workOrder, Mention.Sort.JOINT);
    }

    /** Everything of a sort whose code begins so, the oldest first. */
    public static List<TracedRow> beginning(Mention.Sort sort, String code) {
        return list(LIKE + " and traceSort = ?2 order by workOrder, at, entryNumber, code", beginning(code), sort);
    }

    /** The same of some work orders. */
    public static List<TracedRow> beginning(Mention.Sort sort, String code, List<String> workOrders) {
        return list(
                LIKE + " and traceSort = ?2 and workOrder in ?3 order by workOrder, at, entryNumber, code",
                beginning(code),
                sort,
                workOrders);
    }

    static List<Thing> named(String workOrder) {
        return getEntityManager()
                .createQuery(
                        "select traceSort, shown, count(distinct " + ENTRY + "), min(at), max(at) from TracedRow"
                                + " where workOrder = ?1 group by traceSort, shown order by shown",
                        Object[].class)
                .setParameter(1, workOrder)
                .getResultStream()
                .map(columns -> new Thing(
                        (Mention.Sort) columns[0],
                        (String) columns[1],
                        (long) columns[2],
                        (Instant) columns[3],
                        (Instant) columns[4]))
                .toList();
    }
}
