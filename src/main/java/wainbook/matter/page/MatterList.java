package wainbook.matter.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.page.Form;
import wainbook.page.Option;

/**
 * The open matters that a reader asked for.
 *
 * @param all everything open, oldest first
 */
public record MatterList(List<OpenMatter> all, Wanted wanted) {

    /** What is asked for; a field that is empty asks for all. */
    public record Wanted(String search, String sort, String order, String owner) {

        boolean fits(OpenMatter matter) {
            return matter.holds(search)
                    && (sort.isEmpty() || matter.sort().name().equals(sort))
                    && (order.isEmpty() || matter.order().equals(order))
                    && (owner.isEmpty()
                            || matter.owners().stream().map(Owner::key).anyMatch(owner::equals));
        }

        boolean filters() {
            return !(search + sort + order + owner).isEmpty();
        }
    }

    public List<OpenMatter> shown() {
        return all.stream().filter(wanted::fits).toList();
    }

    public boolean filtered() {
        return wanted.filters();
    }

    public Form form() {
        return Form.EMPTY
                .with("search", wanted.search)
                .with("sort", wanted.sort)
                .with("order", wanted.order)
                .with("owner", wanted.owner);
    }

    public List<Option> sorts() {
        return Arrays.stream(Sort.values())
                .map(sort -> new Option(sort.name(), sort.word()))
                .toList();
    }

    public List<Option> orders() {
        return all.stream()
                .map(OpenMatter::order)
                .filter(order -> !order.isEmpty())
                .distinct()
                .sorted()
                .map(order -> new Option(order, order))
                .toList();
    }

    public List<Option> owners() {
        return all.stream()
                .flatMap(matter -> matter.owners().stream())
                .distinct()
                .sorted(Comparator.comparing(Owner::text))
                .map(owner -> new Option(owner.key(), owner.text()))
                .toList();
    }

    public String csv() {
        return "/matters.csv?"
                + Stream.of("search", "sort", "order", "owner")
                        .map(field -> field + "=" + URLEncoder.encode(form().value(field), StandardCharsets.UTF_8))
                        .collect(Collectors.joining("&"));
    }
}
