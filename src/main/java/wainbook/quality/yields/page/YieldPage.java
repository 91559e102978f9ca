package wainbook.quality.yields.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.gate.passage.Yield;
import wainbook.page.Csv;
import wainbook.page.Form;
import wainbook.page.Option;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.process.Releases;
import wainbook.quality.yields.Pareto;
import wainbook.quality.yields.Pareto.By;
import wainbook.quality.yields.Yields;
import wainbook.works.shift.WorksDay;

/** First-pass and rolled yield, defects, and what they come from. */
@Path("/quality")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class YieldPage {

    /** The days before today that are shown if nobody asks for others. */
    private static final int DAYS = 90;

    /** What is asked for: days of the works, both included, a kind of vehicle, and what to count by. */
    public static class Asked {
        @RestQuery
        Optional<String> from;

        @RestQuery
        Optional<String> to;

        @RestQuery
        Optional<String> kind;

        @RestQuery
        Optional<String> by;
    }

    private final Yields yields;
    private final Releases releases;
    private final WorksDay day;
    private final SignedIn signedIn;

    YieldPage(Yields yields, Releases releases, WorksDay day, SignedIn signedIn) {
        this.yields = yields;
        this.releases = releases;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    @Path("yield")
    public TemplateInstance page(@BeanParam Asked asked) {
        return YieldPages.yields(view(asked));
    }

    @GET
    @Path("yield.csv")
    @Produces("text/csv")
    public Response csv(@BeanParam Asked asked) {
        return Csv.file("yield", header("quality.yieldHeader"), view(asked).stageCells());
    }

    @GET
    @Path("yield/pareto.csv")
    @Produces("text/csv")
    public Response pareto(@BeanParam Asked asked) {
        return Csv.file("pareto", header("quality.paretoHeader"), view(asked).paretoCells());
    }

    private YieldView view(Asked asked) {
        LocalDate today = day.of(signedIn.now().at());
        LocalDate to = date(asked.to).orElse(today);
        LocalDate from = date(asked.from).orElse(to.minusDays(DAYS));
        String kind = asked.kind.orElse("");
        Form form = Form.EMPTY
                .with("from", typed(asked.from, from))
                .with("to", typed(asked.to, to))
                .with("kind", kind)
                .with("by", asked.by.orElse(By.CAUSE.word()));
        form = checked(checked(form, "from", asked.from, today), "to", asked.to, today);
        Yield found = yields.of(day.endOf(from.minusDays(1)), day.endOf(to), kind);
        return new YieldView(
                found,
                Pareto.of(found.slips(), By.of(form.value("by")).orElse(By.CAUSE)),
                form,
                yields.vehicleKinds().stream().map(one -> new Option(one, one)).toList(),
                titles());
    }

    private static String typed(Optional<String> typed, LocalDate used) {
        return typed.filter(text -> !text.isBlank()).orElse(used.toString());
    }

    private static Form checked(Form form, String field, Optional<String> typed, LocalDate today) {
        boolean wrong =
                typed.filter(text -> !text.isBlank()).isPresent() && date(typed).isEmpty();
        return wrong ? form.wrong(field, "quality.notADay", today) : form;
    }

    private static Optional<LocalDate> date(Optional<String> typed) {
        try {
            return typed.map(String::strip).filter(text -> !text.isEmpty()).map(LocalDate::parse);
        } catch (DateTimeParseException noDay) {
            return Optional.empty();
        }
    }

    private Map<String, String> titles() {
        Map<String, String> titles = new HashMap<>();
        releases.sheets().forEach(sheet -> sheet.items().forEach(item -> titles.putIfAbsent(item.key(), item.title())));
        releases.stages().forEach(stage -> titles.put(stage.code(), stage.title()));
        return titles;
    }

    private static List<String> header(String key) {
        return Arrays.asList(Words.of(key).split(";"));
    }
}
