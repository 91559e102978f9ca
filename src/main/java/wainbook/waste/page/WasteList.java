package wainbook.waste.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import wainbook.page.Form;
import wainbook.page.Option;
import wainbook.page.Words;

/** The containers that a reader asked for: those here, unless those that left are asked for too. */
public record WasteList(List<ContainerLine> all, String search, String which, boolean mayOpen) {

    static final String GONE = "gone";
    static final String EVERY = "every";

    public List<ContainerLine> shown() {
        return all.stream()
                .filter(line -> line.holds(search))
                .filter(line -> which.equals(EVERY) || line.gone() == which.equals(GONE))
                .sorted(Comparator.comparing(ContainerLine::standing).thenComparing(line -> line.row().label))
                .toList();
    }

    public long asking() {
        return all.stream()
                .filter(line -> line.standing() == ContainerLine.Standing.STANDS_LONG)
                .count();
    }

    public Form form() {
        return Form.EMPTY.with("search", search).with("which", which);
    }

    public List<Option> options() {
        return List.of(new Option(GONE, Words.of("waste.whichGone")), new Option(EVERY, Words.of("waste.whichEvery")));
    }

    public String csv() {
        return "/waste.csv?search=" + URLEncoder.encode(search, StandardCharsets.UTF_8) + "&which="
                + URLEncoder.encode(which, StandardCharsets.UTF_8);
    }
}
