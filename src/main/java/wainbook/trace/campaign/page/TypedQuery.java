package wainbook.trace.campaign.page;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.page.Filled;
import wainbook.trace.Mention;
import wainbook.trace.campaign.CampaignSaying.Match;
import wainbook.trace.campaign.CampaignSaying.Query;
import wainbook.trace.campaign.CampaignSaying.Term;
import wainbook.trace.campaign.scope.QueryRule;

/**
 * Reads a query from the rows of a form; a row with no code asks for nothing.
 *
 * @param filled with a fault at each field that cannot be read
 */
record TypedQuery(Filled filled, Query query) {

    static TypedQuery of(Filled sent) {
        Filled filled = sent;
        List<Term> terms = new ArrayList<>();
        for (int row = 1; row <= QueryRule.TERMS; row++) {
            if (sent.value("code" + row).isEmpty()) {
                continue;
            }
            Optional<Mention.Sort> sort = one(Mention.Sort.values(), sent.value("sort" + row));
            filled = sort.isEmpty() ? filled.wrong("sort" + row, "page.choose") : filled;
            for (String field : List.of("from" + row, "until" + row)) {
                filled = day(sent.value(field)).isEmpty() ? filled.wrong(field, "page.dayFault") : filled;
            }
            terms.add(new Term(
                    sort.orElse(Mention.Sort.LOT),
                    sent.value("code" + row),
                    Optional.of(sent.value("to" + row)).filter(text -> !text.isEmpty()),
                    day(sent.value("from" + row)).orElse(Optional.empty()),
                    day(sent.value("until" + row)).orElse(Optional.empty())));
        }
        Match match = one(Match.values(), sent.value("match")).orElse(Match.ANY);
        return new TypedQuery(filled, new Query(match, terms));
    }

    /** Empty when it is no day; an empty field is no day and no fault. */
    private static Optional<Optional<LocalDate>> day(String text) {
        try {
            return Optional.of(
                    Optional.of(text).filter(typed -> !typed.isEmpty()).map(LocalDate::parse));
        } catch (DateTimeParseException unreadable) {
            return Optional.empty();
        }
    }

    static <E extends Enum<E>> Optional<E> one(E[] of, String name) {
        return Arrays.stream(of).filter(value -> value.name().equals(name)).findFirst();
    }
}
