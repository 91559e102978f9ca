package wainbook.quality.chart.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import wainbook.page.Form;

/** A filter as it stands in an address. */
final class Query {

    private Query() {}

    static String of(Form form, List<String> fields) {
        return fields.stream()
                .filter(field -> !form.value(field).isEmpty())
                .map(field -> field + "=" + URLEncoder.encode(form.value(field), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }
}
