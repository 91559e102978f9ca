package wainbook.pack.page.view;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import wainbook.page.Filled;
import wainbook.page.Form;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * The packs that a reader asked for.
 *
 * @param parts codes of the parts that are fitted only as packs received here
 * @param keeping the form for those
 */
public record PackList(
        List<PackLine> all, String search, String standing, List<String> parts, boolean mayKeep, Filled keeping) {

    /** Asks for all, the fitted ones and those that have gone too. */
    static final String EVERY = "EVERY";

    /** Those that somebody must see to first; without a filter the packs in vehicles and those gone are left out. */
    public List<PackLine> shown() {
        return all.stream()
                .filter(line -> line.holds(search))
                .filter(line -> standing.isEmpty()
                        ? !search.isEmpty() || here(line)
                        : standing.equals(EVERY) || line.standing().name().equals(standing))
                .sorted(Comparator.comparing(PackLine::standing)
                        .thenComparing(line -> line.due().map(Object::toString).orElse("9"))
                        .thenComparing(line -> line.row().serial))
                .toList();
    }

    private static boolean here(PackLine line) {
        return line.standing() != PackLine.Standing.FITTED && line.standing() != PackLine.Standing.GONE;
    }

    public boolean filtered() {
        return !(search + standing).isEmpty();
    }

    public Form form() {
        return Form.EMPTY.with("search", search).with("standing", standing);
    }

    public List<Option> standings() {
        var options = new ArrayList<>(Arrays.stream(PackLine.Standing.values())
                .map(one -> new Option(one.name(), one.word()))
                .toList());
        options.add(new Option(EVERY, Words.of("pack.every")));
        return options;
    }

    public String csv() {
        return "/packs.csv?search=" + URLEncoder.encode(search, StandardCharsets.UTF_8) + "&standing="
                + URLEncoder.encode(standing, StandardCharsets.UTF_8);
    }

    /** So that letting a part go twice by the same page writes once. */
    public UUID letGoId(String part) {
        return UUID.nameUUIDFromBytes((keeping.id() + part).getBytes(StandardCharsets.UTF_8));
    }

    public long count(String name) {
        return all.stream().filter(line -> line.standing().name().equals(name)).count();
    }
}
