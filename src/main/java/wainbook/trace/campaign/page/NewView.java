package wainbook.trace.campaign.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.order.OrderList;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.trace.Mention;
import wainbook.trace.campaign.CampaignSaying.Because;
import wainbook.trace.campaign.CampaignSaying.Hazard;
import wainbook.trace.campaign.CampaignSaying.InScope;
import wainbook.trace.campaign.CampaignSaying.Match;
import wainbook.trace.campaign.scope.QueryRule;

/**
 * The form that opens a campaign.
 *
 * @param found what the query finds; absent until it can be asked
 * @param voided those of its places that were taken back since
 */
public record NewView(Filled filled, Optional<List<InScope>> found, Set<Because> voided) {

    private static final List<String> HEAD = List.of("number", "title", "wrong", "remedy", "hazard", "match");
    private static final List<String> TERM = List.of("sort", "code", "to", "from", "until");

    /** Every field, as it is sent on when it is opened as previewed. */
    public static List<String> names() {
        return Stream.concat(
                        HEAD.stream(),
                        IntStream.rangeClosed(1, QueryRule.TERMS)
                                .boxed()
                                .flatMap(row -> TERM.stream().map(field -> field + row)))
                .toList();
    }

    public List<String> fields() {
        return names();
    }

    public List<String> rows() {
        return IntStream.rangeClosed(1, QueryRule.TERMS)
                .mapToObj(String::valueOf)
                .toList();
    }

    public List<Option> sorts() {
        return Arrays.stream(Mention.Sort.values())
                .map(sort -> new Option(sort.name(), sort.word()))
                .toList();
    }

    public List<Option> hazards() {
        return Arrays.stream(Hazard.values())
                .map(hazard -> new Option(hazard.name(), Words.of("campaign.hazardLong." + hazard.name())))
                .toList();
    }

    public List<Option> matches() {
        return Arrays.stream(Match.values())
                .map(match -> new Option(match.name(), Words.of("campaign.match." + match.name())))
                .toList();
    }

    public List<InScope> vehicles() {
        return found.orElse(List.of());
    }

    /** As many as any of whose places was taken back. */
    public long doubtful() {
        return vehicles().stream()
                .filter(vehicle -> vehicle.because().stream().anyMatch(voided::contains))
                .count();
    }

    /** Those that were taken back come first: only a few are shown. */
    public List<Because> places(InScope vehicle) {
        return Stream.concat(
                        vehicle.because().stream().filter(voided::contains),
                        vehicle.because().stream().filter(place -> !voided.contains(place)))
                .toList();
    }

    public boolean voided(Because place) {
        return voided.contains(place);
    }

    /** Whether nothing that still stands brings it in. */
    public boolean onlyVoided(InScope vehicle) {
        return !vehicle.because().isEmpty() && voided.containsAll(vehicle.because());
    }

    public long here() {
        return vehicles().stream().filter(vehicle -> !vehicle.withOperator()).count();
    }

    /** A phase in words. */
    public String phase(InScope vehicle) {
        return OrderList.word(vehicle.phase());
    }

    public static String because(Because place) {
        return place.sort().word() + " " + place.shown();
    }

    public String place(Because place) {
        return because(place);
    }

    public String path(Because place) {
        return PlacePath.of(place);
    }
}
