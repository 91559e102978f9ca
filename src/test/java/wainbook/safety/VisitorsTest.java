package wainbook.safety;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatters;
import wainbook.safety.SafetySaying.VisitorInducted;
import wainbook.safety.visit.Visit;
import wainbook.safety.visit.Visiting;
import wainbook.safety.visit.Visitor;
import wainbook.safety.visit.VisitorName;
import wainbook.safety.visit.Visits;
import wainbook.works.shift.WorksDay;

/** A visitor is inducted, let in by a host, and seen out; and who is inside is on the page at once. */
@QuarkusTest
@Tag("database")
class VisitorsTest {

    private static final String PAGE = "/safety/visitors";

    @Inject
    Ledger ledger;

    @Inject
    Visiting visiting;

    @Inject
    OpenMatters matters;

    @Inject
    WorksDay day;

    @Inject
    Clock clock;

    @BeforeEach
    void a_host_with_the_competence() {
        Cast.assemble();
        Cast.AUTHORISED.give("HV", 2);
        Cast.SECOND_AUTHORISED.give("HV", 1);
    }

    @AfterEach
    void everybody_goes_home() {
        Visits.of(works())
                .inside()
                .forEach(visit ->
                        visiting.leave(new Visiting.ToLeave(UUID.randomUUID(), visit.number()), as(Cast.OUTSIDER)));
    }

    @Test
    void a_visitor_comes_in_by_induction_and_host_and_goes_out_by_anybody() {
        Browsing host = Browsing.as(Cast.AUTHORISED);
        String visitor = inducted(host, "Vera Gast", "Glazing Works");
        assertThat(enter(host, visitor, "Commissioning bay").statusCode()).isEqualTo(303);

        assertThat(host.page(PAGE))
                .contains("Vera Gast", "Glazing Works", "Commissioning bay", Cast.AUTHORISED.fullName());
        assertThat(host.get(PAGE + ".csv").asString()).contains(visitor).doesNotContain("Vera Gast");
        assertThat(enter(host, visitor, "Stores").asString()).contains("inside already");

        Visit visit = visit(visitor);
        Browsing outsider = Browsing.as(Cast.OUTSIDER);
        Map<String, Object> out = outsider.form(PAGE);
        assertThat(outsider.send(PAGE + "/" + visit.number() + "/out", out).statusCode())
                .isEqualTo(303);
        out.put("id", UUID.randomUUID());
        assertThat(outsider.send(PAGE + "/" + visit.number() + "/out", out).statusCode())
                .as("out is never refused, not even twice")
                .isEqualTo(303);
        assertThat(Visits.of(works()).inside())
                .noneMatch(known -> known.visitor().equals(visitor));
    }

    @Test
    void the_ledger_has_a_number_and_a_hash_and_a_deleted_name_leaves_the_number() {
        Browsing host = Browsing.as(Cast.AUTHORISED);
        String visitor = inducted(host, "Igor Fremd", "Roof and Light");
        enter(host, visitor, "Roof");
        Entry entry = works().saying(VisitorInducted.class)
                .filter(known -> ((VisitorInducted) known.saying()).visitor().equals(visitor))
                .findFirst()
                .orElseThrow();
        assertThat(entry.saying().toString()).doesNotContain("Igor", "Roof and Light");
        assertThat(((VisitorInducted) entry.saying()).nameHash().orElseThrow()).hasSize(64);
        QuarkusTransaction.requiringNew().run(() -> VisitorName.deleteById(entry.id()));
        assertThat(host.page(PAGE)).contains(visitor).doesNotContain("Igor Fremd");
    }

    @Test
    void a_visitor_whose_induction_has_run_out_is_refused_and_told_what_lifts_it() {
        Instant past = clock.instant();
        var asked = new Visiting.ToInduct(UUID.randomUUID(), Optional.empty(), "Past Caller", "", day.of(past));
        Entry entry = visiting.induct(asked, as(Cast.AUTHORISED)).fold(done -> done, reasons -> {
            throw new AssertionError(reasons);
        });
        Entry again = visiting.induct(asked, as(Cast.AUTHORISED)).fold(done -> done, reasons -> {
            throw new AssertionError(reasons);
        });
        assertThat(again).as("asked twice, inducted once").isEqualTo(entry);
        String visitor = ((VisitorInducted) entry.saying()).visitor();
        Actor later = Cast.AUTHORISED.at(past.plus(Duration.ofDays(2)));
        var refused = visiting.enter(new Visiting.ToEnter(UUID.randomUUID(), visitor, "Roof", Optional.empty()), later);
        assertThat(refused.reasons()).singleElement().satisfies(reason -> {
            assertThat(reason.key()).isEqualTo("safety.inductionOver");
            assertThat(reason.lift()).contains(PAGE + "/induction?visitor=" + visitor);
        });
    }

    @Test
    void somebody_without_the_competence_can_neither_induct_nor_let_in_and_keeps_what_was_typed() {
        Browsing clerk = Browsing.as(Cast.HANDOVER_CLERK);
        assertThat(clerk.page(PAGE + "/induction")).contains("You cannot be the host");
        Map<String, Object> form = clerk.form(PAGE);
        form.put("id", UUID.randomUUID());
        form.put("name", "Vera Gast");
        form.put("validTo", day.of(clock.instant()).toString());
        long before = names();
        Response answer = clerk.send(PAGE + "/induction", form);
        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.asString()).contains("Vera Gast");
        assertThat(names()).isEqualTo(before);
    }

    private static long names() {
        return QuarkusTransaction.requiringNew().call(() -> VisitorName.count());
    }

    @Test
    void a_visitor_who_is_still_inside_after_the_shift_is_an_open_matter_until_another_host_has_them() {
        Browsing host = Browsing.as(Cast.AUTHORISED);
        String visitor = inducted(host, "Late Leaver", "Cable Pullers");
        enter(host, visitor, "Pack bay");
        Visit visit = visit(visitor);
        Instant end = day.shiftEnd(visit.hostedAt()).orElseGet(() -> day.endOf(day.of(visit.hostedAt())));
        assertThat(matter(visit, end.minusSeconds(1))).isEmpty();
        assertThat(matter(visit, end).orElseThrow()).contains("The shift is over");

        Browsing second = Browsing.as(Cast.SECOND_AUTHORISED);
        Map<String, Object> form = second.form(PAGE);
        assertThat(second.send(PAGE + "/" + visit.number() + "/host", form).statusCode())
                .isEqualTo(303);
        assertThat(visit(visitor).host()).isEqualTo(Cast.SECOND_AUTHORISED.number());
    }

    private Optional<String> matter(Visit visit, Instant at) {
        return matters.all(at).stream()
                .filter(matter -> matter.sort() == OpenMatter.Sort.VISITOR)
                .filter(matter -> matter.title().endsWith(" " + visit.number()))
                .map(OpenMatter::what)
                .findFirst();
    }

    private String inducted(Browsing host, String name, String firm) {
        Map<String, Object> form = host.form(PAGE + "/induction");
        form.put("name", name);
        form.put("firm", firm);
        form.put("validTo", day.of(clock.instant()).plusMonths(6).toString());
        assertThat(host.send(PAGE + "/induction", form).statusCode()).isEqualTo(303);
        List<Visitor> known = Visits.of(works()).visitors();
        return known.get(known.size() - 1).number();
    }

    private static Response enter(Browsing host, String visitor, String area) {
        Map<String, Object> form = host.form(PAGE + "/in");
        form.put("visitor", visitor);
        form.put("area", area);
        return host.send(PAGE + "/in", form);
    }

    private Visit visit(String visitor) {
        return Visits.of(works()).all().stream()
                .filter(visit -> visit.visitor().equals(visitor))
                .reduce((former, latter) -> latter)
                .orElseThrow();
    }

    private History works() {
        return ledger.history(Subject.works());
    }

    private Actor as(Cast person) {
        return Actor.of(person.number(), clock);
    }
}
