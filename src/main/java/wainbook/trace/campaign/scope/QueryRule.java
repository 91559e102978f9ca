package wainbook.trace.campaign.scope;

import java.util.ArrayList;
import java.util.List;
import wainbook.act.Reason;
import wainbook.trace.Mention;
import wainbook.trace.campaign.CampaignSaying.Query;
import wainbook.trace.campaign.CampaignSaying.Term;

/** What stands against a query, whatever it would find. */
public final class QueryRule {

    /** The most terms of one query. */
    public static final int TERMS = 4;

    private static final int SHORTEST_BEGINNING = 2;

    private QueryRule() {}

    /** Each reason at the field of its term, counted from 1. */
    public static List<Reason> against(Query query) {
        var against = new ArrayList<Reason>();
        if (query.terms().isEmpty()) {
            against.add(Reason.of("campaign.noTerm", Reason.WORKS_RULE).liftedAt("#code1"));
        }
        if (query.terms().size() > TERMS) {
            against.add(
                    Reason.of("campaign.tooManyTerms", Reason.WORKS_RULE, TERMS).liftedAt("#code1"));
        }
        for (int i = 0; i < query.terms().size(); i++) {
            term(query.terms().get(i), i + 1, against);
        }
        return against;
    }

    private static void term(Term term, int number, List<Reason> against) {
        String code = term.code().strip();
        boolean beginning = code.endsWith("*");
        if (Mention.code(code).length() < (beginning ? SHORTEST_BEGINNING + 1 : 1)) {
            against.add(Reason.of("campaign.codeShort", Reason.WORKS_RULE, SHORTEST_BEGINNING)
                    .liftedAt("#code" + number));
        }
        if (term.to().isPresent() && beginning) {
            against.add(
                    Reason.of("campaign.rangeOfBeginnings", Reason.WORKS_RULE).liftedAt("#to" + number));
        } else if (term.to()
                .filter(to -> Codes.compare(Mention.code(code), Mention.code(to)) > 0)
                .isPresent()) {
            against.add(Reason.of(
                            "campaign.rangeBackwards",
                            Reason.WORKS_RULE,
                            code,
                            term.to().get())
                    .liftedAt("#to" + number));
        }
        if (term.from().isPresent()
                && term.until()
                        .filter(until -> until.isBefore(term.from().get()))
                        .isPresent()) {
            against.add(Reason.of("campaign.daysBackwards", Reason.WORKS_RULE).liftedAt("#until" + number));
        }
    }
}
