package wainbook.paper;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.Donor;
import wainbook.house.OnRecord;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.permit.PermitForm;
import wainbook.permit.PermitSaying.Ticked;
import wainbook.permit.Precaution;
import wainbook.permit.Work;
import wainbook.permit.paper.PaperPermitRow;

/** A permit on paper is shown with those of the tool; while it is out, nothing is permitted that cannot stand beside it. */
@QuarkusTest
@Tag("database")
class PermitOnPaperTest {

    @Inject
    Ledger ledger;

    @Inject
    Clock clock;

    private OnRecord bus;
    private String code;

    @BeforeEach
    void a_bus_and_a_blank_permit_form() {
        Cast.assemble();
        bus = OnRecord.accepted();
        Cast.TEAM_LEADER
                .asks()
                .contentType("application/json")
                .body(Map.of("id", Donor.id(), "sort", "PERMIT", "count", 1))
                .post("/api/v1/paper/blank")
                .then()
                .statusCode(201);
        code = PaperForm.code(PaperForms.of(ledger.history(Subject.works())).next() - 1);
    }

    @Test
    void one_that_is_out_on_paper_is_listed_and_asked_for_conflicts_until_it_is_closed() {
        assertThat(issuedBesideIt()).doesNotContain("permit.liftingAndHeight");
        bring(form(Optional.empty()), 1);
        assertThat(Browsing.as(Cast.AUDITOR).page("/permits"))
                .contains(bus.number() + " / " + code, "open on paper", "A precaution is not ticked.");
        assertThat(issuedBesideIt()).contains("permit.liftingAndHeight");

        bring(form(Optional.of(clock.instant())), 2);
        assertThat(issuedBesideIt()).doesNotContain("permit.liftingAndHeight");
        assertThat(PaperPermitRow.<PaperPermitRow>findById(bus.number() + "/" + code).stillOpen)
                .isFalse();
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + bus.number()))
                .contains("Permit on paper " + code, "lift the pack frame", "not closed", "; closed.");
    }

    private void bring(PermitForm form, int transcription) {
        String photograph = Cast.TECHNICIAN
                .asks()
                .contentType("image/png")
                .body(UUID.randomUUID().toString().getBytes(StandardCharsets.UTF_8))
                .post("/api/v1/paper/photographs")
                .then()
                .statusCode(200)
                .extract()
                .path("sha256");
        post(
                        Cast.TECHNICIAN,
                        "/transcription",
                        Map.of(
                                "id",
                                Donor.id(),
                                "vehicle",
                                bus.number(),
                                "photograph",
                                photograph,
                                "permit",
                                Forms.json(form)))
                .then()
                .statusCode(201);
        post(
                        Cast.TEAM_LEADER,
                        "/agreement",
                        Map.of("id", Donor.id(), "transcription", transcription, "vehicle", bus.number()))
                .then()
                .statusCode(201);
    }

    private PermitForm form(Optional<Instant> closed) {
        Instant now = clock.instant();
        return new PermitForm(
                Work.LIFTING,
                "lift the pack frame",
                List.of(),
                List.of(new Ticked(Precaution.NOBODY_BENEATH, Optional.empty())),
                Cast.TEAM_LEADER.number(),
                now,
                Cast.TECHNICIAN.number(),
                Optional.of(now),
                now.plusSeconds(3600),
                closed,
                closed);
    }

    /** What stands against a permit for work at height on the same vehicle. */
    private List<String> issuedBesideIt() {
        return Cast.TEAM_LEADER
                .asks()
                .contentType("application/json")
                .body(Map.of(
                        "id",
                        Donor.id(),
                        "order",
                        bus.number(),
                        "sort",
                        "HEIGHT",
                        "work",
                        "",
                        "precautions",
                        List.of(),
                        "receiver",
                        Cast.TECHNICIAN.number(),
                        "validUntil",
                        clock.instant().toString()))
                .post("/api/v1/permits")
                .jsonPath()
                .getList("reasons.key");
    }

    private Response post(Cast who, String path, Map<String, ?> body) {
        return who.asks().contentType("application/json").body(body).post("/api/v1/paper/" + code + path);
    }
}
