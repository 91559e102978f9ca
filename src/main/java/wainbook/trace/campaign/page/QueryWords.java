package wainbook.trace.campaign.page;

import java.util.List;
import java.util.stream.Collectors;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.trace.campaign.CampaignSaying.Query;
import wainbook.trace.campaign.CampaignSaying.Term;

/** A query in words. */
final class QueryWords {

    private QueryWords() {}

    static List<String> terms(Query query) {
        return query.terms().stream().map(QueryWords::term).toList();
    }

    static String all(Query query) {
        return terms(query).stream()
                .collect(Collectors.joining(
                        " " + Words.of("campaign.joined." + query.match().name()) + " "));
    }

    private static String term(Term term) {
        String code =
                term.to().map(to -> Words.of("campaign.range", term.code(), to)).orElse(term.code());
        String days = term.from().isEmpty() && term.until().isEmpty()
                ? ""
                : term.from().isEmpty()
                        ? Words.of(
                                "campaign.untilDay", Formats.date(term.until().get()))
                        : term.until().isEmpty()
                                ? Words.of(
                                        "campaign.fromDay",
                                        Formats.date(term.from().get()))
                                : Words.of(
                                        "campaign.betweenDays",
                                        Formats.date(term.from().get()),
                                        Formats.date(term.until().get()));
        return (term.sort().word() + " " + code + " " + days).strip();
    }
}
