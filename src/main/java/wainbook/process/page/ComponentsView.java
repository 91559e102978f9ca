package wainbook.process.page;

import java.math.BigDecimal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import wainbook.page.Form;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.process.ComponentLibrary;
import wainbook.process.component.Component;

/** The library of parts as a list that was searched. */
public record ComponentsView(
        ComponentLibrary library,
        int inForce,
        String search,
        String kind,
        UnaryOperator<String> titles,
        boolean mayTake) {

    public boolean nothing() {
        return library.components().isEmpty();
    }

    public boolean old() {
        return library.revision() != inForce;
    }

    public List<Component> rows() {
        String wanted = search.toLowerCase(Locale.ROOT);
        return library.components().stream()
                .filter(one -> kind.isEmpty() || one.vehicleKind().equals(kind))
                .filter(one -> (one.code() + " " + one.title() + " " + one.reference() + " "
                                + one.packType().orElse(""))
                        .toLowerCase(Locale.ROOT)
                        .contains(wanted))
                .toList();
    }

    public Form form() {
        return Form.EMPTY.with("search", search).with("kind", kind);
    }

    public List<Option> kinds() {
        return library.components().stream()
                .map(Component::vehicleKind)
                .distinct()
                .map(code -> new Option(code, titles.apply(code)))
                .toList();
    }

    public List<Option> revisions() {
        return IntStream.rangeClosed(1, inForce)
                .mapToObj(number -> new Option("" + number, Words.of("process.componentsRevision", number)))
                .toList();
    }

    public String csv() {
        return "/process/components/file.csv?search=" + URLEncoder.encode(search, StandardCharsets.UTF_8) + "&kind="
                + URLEncoder.encode(kind, StandardCharsets.UTF_8) + "&revision=" + library.revision();
    }

    public String title(Component one) {
        return titles.apply(one.vehicleKind());
    }

    public String added(Component one) {
        return Formats.signed(one.addedKg());
    }

    public String sort(Component one) {
        return Words.of("process.componentSort." + one.sort().name());
    }

    public String origin(Component one) {
        return Words.of("process.componentOrigin." + one.origin().name());
    }

    public String place(Component one) {
        return one.fromFrontM().toPlainString().replace('-', '−');
    }

    List<String> cells(Component one) {
        return List.of(
                one.code(),
                one.vehicleKind(),
                one.title(),
                sort(one),
                one.massKg().toPlainString(),
                one.fromFrontM().toPlainString(),
                one.heightM().map(BigDecimal::toPlainString).orElse(""),
                one.massUncertaintyKg().toPlainString(),
                one.placeUncertaintyM().toPlainString(),
                origin(one),
                one.reference(),
                one.packType().orElse(""),
                one.nominalKwh().map(BigDecimal::toPlainString).orElse(""),
                one.part().orElse(""));
    }
}
