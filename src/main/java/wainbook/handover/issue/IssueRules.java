package wainbook.handover.issue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import wainbook.act.Reason;
import wainbook.works.CompetenceRule;
import wainbook.works.Person;

/**
 * What stands against issuing a document.
 *
 * @param figures of the vehicle, by the names of {@link Figures}
 */
public record IssueRules(String order, Template template, Map<String, Object> figures, Person signer, LocalDate today) {

    /** Held by whoever was appointed in writing to sign the works' documents. */
    public static final String COMPETENCE = "SIGNATORY";

    public List<Reason> against() {
        var against = new ArrayList<>(missing());
        CompetenceRule.against(signer, COMPETENCE, today).ifPresent(against::add);
        return against;
    }

    /** Figures that the document cannot do without and that are not on record. */
    public List<Reason> missing() {
        return template.needs().stream()
                .filter(need -> empty(figures.get(need)))
                .map(need -> Reason.of("handover.needs" + capital(need), Reason.WORKS_RULE, template.title())
                        .liftedAt("/orders/" + order))
                .toList();
    }

    private static boolean empty(Object figure) {
        return figure == null
                || (figure instanceof Collection<?> rows && rows.isEmpty())
                || (figure instanceof Map<?, ?> named && named.values().stream().allMatch(IssueRules::empty))
                || String.valueOf(figure).isEmpty();
    }

    private static String capital(String need) {
        return Character.toUpperCase(need.charAt(0)) + need.substring(1);
    }
}
