package wainbook.quality.containment.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.quality.QualitySaying.DoubtOpened;
import wainbook.quality.containment.Opening;
import wainbook.quality.containment.page.view.NewView;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** Opens a containment by hand: says first how many vehicles and entries it would touch. */
@Path("/quality/containments/new")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
public class NewContainmentPage {

    private final Opening opening;
    private final WorksDay day;
    private final SignedIn signedIn;

    NewContainmentPage(Opening opening, WorksDay day, SignedIn signedIn) {
        this.opening = opening;
        this.day = day;
        this.signedIn = signedIn;
    }

    /** What is asked in the address. */
    public static class InAddress {
        @RestQuery
        Optional<String> sort;

        @RestQuery
        Optional<String> code;

        @RestQuery
        Optional<String> part;

        @RestQuery
        Optional<String> revision;

        @RestQuery
        Optional<String> item;

        @RestQuery
        Optional<String> competence;

        @RestQuery
        Optional<String> from;

        @RestQuery
        Optional<String> to;

        @RestQuery
        Optional<String> reason;

        @RestQuery
        Optional<String> holdsAll;

        Filled filled() {
            Map<String, Optional<String>> values = new LinkedHashMap<>();
            values.put("sort", sort);
            values.put("code", code);
            values.put("part", part);
            values.put("revision", revision);
            values.put("item", item);
            values.put("competence", competence);
            values.put("from", from);
            values.put("to", to);
            values.put("reason", reason);
            values.put("holdsAll", holdsAll);
            Filled filled = Filled.fresh();
            for (Map.Entry<String, Optional<String>> value : values.entrySet()) {
                filled = filled.with(value.getKey(), value.getValue().orElse(""));
            }
            return filled;
        }
    }

    @GET
    public TemplateInstance form(@BeanParam InAddress typed) {
        Filled filled = typed.filled();
        return draw(filled.value("code").isEmpty() ? filled : question(filled).checked());
    }

    private Question question(Filled filled) {
        return new Question(
                filled,
                Question.sort(filled.value("sort")),
                day.zone(),
                signedIn.now().at());
    }

    private TemplateInstance draw(Filled filled) {
        Question question = question(filled);
        boolean known = filled.right()
                && !filled.value("code").isEmpty()
                && opening.against(question.asked()).stream()
                        .noneMatch(reason -> reason.key().equals("quality.unknown"));
        Filled told = known || filled.value("code").isEmpty() || !filled.right()
                ? filled
                : filled.refused(opening.against(question.asked()).stream()
                        .filter(reason -> reason.key().equals("quality.unknown"))
                        .toList());
        return ContainmentPages.open(new NewView(
                told,
                question.sort(),
                known ? Optional.of(opening.sketch(question.asked(), question.now())) : Optional.empty()));
    }

    @POST
    public Response open(
            @RestForm String id,
            @RestForm String sort,
            @RestForm String code,
            @RestForm String part,
            @RestForm String revision,
            @RestForm String item,
            @RestForm String competence,
            @RestForm String from,
            @RestForm String to,
            @RestForm String reason,
            @RestForm String holdsAll) {
        List<String> values =
                java.util.Arrays.asList(sort, code, part, revision, item, competence, from, to, reason, holdsAll);
        Filled filled = Filled.sent(id);
        for (int i = 0; i < NewView.FIELDS.size(); i++) {
            filled = filled.with(NewView.FIELDS.get(i), values.get(i));
        }
        Filled checked = question(filled).checked();
        if (!checked.right()) {
            return checked.again(this::draw);
        }
        Filled sent = filled;
        return opening.open(question(filled).asked(), signedIn.actor())
                .fold(
                        opened -> sent.answer(
                                wainbook.act.Outcome.done(opened),
                                "/quality/containments/" + ((DoubtOpened) opened.saying()).containment(),
                                this::draw),
                        reasons -> sent.refused(reasons).again(this::draw));
    }
}
