package wainbook.line.balance.page;

import java.util.List;
import java.util.stream.Stream;
import wainbook.line.balance.asked.Question;
import wainbook.line.balance.content.Content;
import wainbook.page.Words;

/** What a search was asked beside its aim: rules, persons, times. */
public record AskedInWords(Content content, Question question) {

    public List<String> all() {
        return Stream.of(rules(), persons(), times()).flatMap(some -> some).toList();
    }

    private Stream<String> rules() {
        return question.rules().stream()
                .map(rule -> Words.of(
                        "line.balanceAskedRule." + rule.sort().name(),
                        keys(rule.one()),
                        keys(rule.other()),
                        rule.stations()));
    }

    private Stream<String> persons() {
        return content.stages().stream()
                .filter(place -> question.persons(place.stage()) > 1)
                .map(place -> Words.of(
                        "line.balanceAskedPersons",
                        BalanceView.title(content, place.stage()),
                        question.persons(place.stage())));
    }

    private Stream<String> times() {
        return question.asRecorded() ? Stream.of(Words.of("line.balanceAskedTimes")) : Stream.empty();
    }

    private static String keys(List<String> keys) {
        return String.join(", ", keys);
    }
}
