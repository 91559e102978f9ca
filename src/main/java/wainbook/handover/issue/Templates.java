package wainbook.handover.issue;

import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.handover.HandoverSaying.TextReleased;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;

/** The texts in force: those the program brings, or what the works has made of them since. */
@ApplicationScoped
public class Templates {

    /** In the order of the page. */
    private static final List<String> CODES = List.of(
            "weight-record",
            "high-voltage-record",
            "conversion-statement",
            "battery-data",
            "rescue-sheet",
            "safety-sheet",
            "charging-instructions",
            "workshop-isolation",
            "service-schedule",
            "spare-parts",
            "handover-record",
            "carbon-statement");

    private static final String BREAK = "\n---\n";

    /** What stands above the text in a file. */
    record Head(String title, String about, List<String> answers, List<String> needs) {}

    private static final List<Template> BROUGHT =
            CODES.stream().map(Templates::brought).toList();

    private final Ledger ledger;

    Templates(Ledger ledger) {
        this.ledger = ledger;
    }

    public List<Template> all() {
        return after(ledger.history(Subject.works()));
    }

    public Optional<Template> named(String code) {
        return all().stream().filter(template -> template.code().equals(code)).findFirst();
    }

    static List<Template> after(History works) {
        Map<String, Template> known = new LinkedHashMap<>();
        BROUGHT.forEach(template -> known.put(template.code(), template));
        works.saying(TextReleased.class)
                .map(entry -> (TextReleased) entry.saying())
                .forEach(said -> known.computeIfPresent(
                        said.document(), (code, before) -> before.changed(said.revision(), said.text())));
        return List.copyOf(known.values());
    }

    /** As the program brings it, whatever the works made of it. */
    static Optional<Template> asBrought(String code) {
        return BROUGHT.stream().filter(template -> template.code().equals(code)).findFirst();
    }

    private static Template brought(String code) {
        try (InputStream file = Templates.class.getResourceAsStream("/documents/" + code + ".md")) {
            String whole = new String(file.readAllBytes(), StandardCharsets.UTF_8);
            int end = whole.indexOf(BREAK);
            Head head = new YAMLMapper().readValue(whole.substring(0, end), Head.class);
            return new Template(
                    code,
                    head.title(),
                    head.about(),
                    head.answers(),
                    head.needs(),
                    1,
                    whole.substring(end + BREAK.length()));
        } catch (IOException e) {
            throw new UncheckedIOException(code, e);
        }
    }
}
