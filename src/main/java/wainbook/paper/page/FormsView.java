package wainbook.paper.page;

import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import wainbook.page.Filled;
import wainbook.page.Leaf;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.paper.PaperForm;
import wainbook.paper.Sort;

/**
 * The list of forms.
 *
 * @param attention forms in use or waiting to be compared
 * @param vehicles in the works, for what is printed for one
 */
public record FormsView(
        List<FormLine> lines,
        long attention,
        Leaf leaf,
        String state,
        String text,
        List<Option> vehicles,
        Filled filled) {

    public List<Option> states() {
        return Arrays.stream(PaperForm.State.values())
                .map(one -> new Option(one.name(), Words.of("paper.state." + one.name())))
                .toList();
    }

    public List<Option> blanks() {
        return Arrays.stream(Sort.values())
                .filter(Sort::blank)
                .map(one -> new Option(one.name(), Words.of("paper.sort." + one.name())))
                .toList();
    }

    /** What is printed for one vehicle. */
    public List<Option> sorts() {
        return List.of(
                new Option(Sort.ITEMS.name(), Words.of("paper.sort.ITEMS")),
                new Option(Sort.ISOLATION.name(), Words.of("paper.sort.ISOLATION")));
    }

    public UUID id() {
        return UUID.randomUUID();
    }

    /** The same list as a file. */
    public String csv() {
        return "/paper.csv?state=" + state + "&text=" + text;
    }

    public boolean filtered() {
        return !state.isEmpty() || !text.isEmpty();
    }
}
