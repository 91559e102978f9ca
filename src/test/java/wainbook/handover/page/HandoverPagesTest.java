package wainbook.handover.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.handover.FinishedVehicle;
import wainbook.handover.record.SignedReceipt;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;

/** The clerk's pages: the list, one vehicle's documents, the form of a document, and handing over. */
@QuarkusTest
@Tag("database")
class HandoverPagesTest {

    private static final String[] BARRING = {
        "GB-01", "GB-03", "GB-10", "GB-11", "GB-15", "GB-27", "GB-28", "GB-29", "GB-30", "GB-31"
    };

    private String number;
    private String page;

    @BeforeEach
    void a_finished_bus_stands_in_the_yard() {
        Cast.assemble();
        number = "HP-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        page = "/handover/" + number;
        FinishedVehicle.build(number, FinishedVehicle.plainFacts());
    }

    @Test
    void the_list_says_how_many_documents_are_missing() {
        Browsing clerk = Browsing.as(Cast.HANDOVER_CLERK);
        assertThat(clerk.page("/handover?search=" + number)).contains(page, "10 documents", "finished");
        assertThat(clerk.page("/handover?promised=LATE&search=" + number)).contains("No vehicle fits");
        assertThat(clerk.page("/handover?search=" + number + "&phase=ON_LINE"))
                .contains("No vehicle fits")
                .doesNotContain(page + "\"");
        assertThat(clerk.page("/handover.csv?search=" + number))
                .startsWith("number,operator,phase")
                .contains(number + ",\"Vale and Fen\",finished,2027-02-12,10,");
    }

    @Test
    void the_clerk_sees_by_when_the_papers_have_to_be_here() {
        Browsing clerk = Browsing.as(Cast.HANDOVER_CLERK);
        OnRecord bus = OnRecord.accepted().at("strip", "ST-1");
        try {
            assertThat(clerk.page("/handover/" + bus.number()))
                    .contains("By the forecast of the line it will be ready to leave on ");
            assertThat(clerk.page("/handover.csv?search=" + bus.number()))
                    .contains("expected,\"nine in ten by\",\"ending before\"")
                    .containsPattern(bus.number() + ",.*,20\\d\\d-\\d\\d-\\d\\d,20\\d\\d-\\d\\d-\\d\\d,0");
        } finally {
            bus.out();
        }
        assertThat(clerk.page(page))
                .as("nothing is forecast of a vehicle that has left the line")
                .doesNotContain("By the forecast of the line");
    }

    @Test
    void the_page_shows_what_is_missing_why_and_by_which_source() {
        assertThat(Browsing.as(Cast.AUDITOR).page(page))
                .contains("Missing before handover (10)", "To see to (", "Not needed (")
                .contains("Needed because Propulsion changed: yes.")
                .contains("SI 2002/2742, reg 16; text read", "from memory, look it up")
                .contains("before any use on a road", "duty of the registered keeper")
                .contains("This is no legal advice", "11 reasons stand against it")
                .doesNotContain("name=\"receivedBy\"", page + "/documents/GB-01\">Note");
    }

    @Test
    void what_is_not_known_is_a_question_that_leads_to_its_fact() {
        String other = number + "B";
        Map<String, String> facts = FinishedVehicle.plainFacts();
        facts.remove("charge_dc");
        FinishedVehicle.build(other, facts);
        assertThat(Browsing.as(Cast.HANDOVER_CLERK).page("/handover/" + other))
                .contains(
                        "Unknown: Charges by DC.",
                        "Facts not known yet (",
                        "/orders/" + other + "/facts?fact=charge_dc",
                        "Charges by DC");
        assertThat(Browsing.as(Cast.HANDOVER_CLERK).page("/handover/" + other + "/documents/GB-30"))
                .contains("State: Charges by DC");
    }

    @Test
    void a_document_is_noted_by_its_form_and_told_on_the_record() {
        Browsing clerk = Browsing.as(Cast.HANDOVER_CLERK);
        String path = page + "/documents/GB-01";
        Map<String, Object> form = clerk.form(path);
        form.putAll(Map.of("reference", "", "validUntil", "soon", "note", ""));
        Response back = clerk.send(path, form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("state-fault", "validUntil-fault", "value=\"soon\"");
        form.putAll(Map.of("state", "IN_HAND", "validUntil", "2099-12-31"));
        back = clerk.send(path, form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("reference-fault", (String) form.get("id"));
        form.put("reference", "NA-2026/77");
        assertThat(clerk.send(path, form).header("Location")).endsWith(page + "?noted=GB-01");
        assertThat(clerk.send(path, form).statusCode()).isEqualTo(303);
        assertThat(clerk.page(page + "?noted=GB-01"))
                .contains("Notice of alteration to the register: in hand, number NA-2026/77", "10 reasons stand");
        assertThat(clerk.page(page + "?noted=GB-99")).doesNotContain("verdict quiet");
        assertThat(clerk.page(page))
                .contains("Missing before handover (9)", "in hand, number NA-2026/77, valid until 31 Dec 2099");
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + number + "?kind=handover"))
                .contains("Document GB-01, Notice of alteration to the register", "in hand, number NA-2026/77")
                .contains("1 in hand or waived, 9 missing before handover", "href=\"" + page + "\"");
    }

    @Test
    void a_copy_goes_with_the_note_and_other_kinds_of_file_do_not() {
        Browsing clerk = Browsing.as(Cast.HANDOVER_CLERK);
        String path = page + "/documents/GB-31";
        Map<String, Object> form = clerk.form(path);
        form.putAll(Map.of("state", "IN_HAND", "reference", "RS-1", "validUntil", "", "note", ""));
        Response back = clerk.send(path, form, "sheet.html", "text/html");
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("file-fault", "value=\"RS-1\"");
        assertThat(clerk.send(path, form, "sheet.pdf", "application/pdf").statusCode())
                .isEqualTo(303);
        assertThat(clerk.page(page)).contains("in hand, number RS-1, file ");
    }

    @Test
    void only_those_who_may_waive_are_offered_it() {
        String path = page + "/documents/GB-29";
        assertThat(Browsing.as(Cast.HANDOVER_CLERK).page(path))
                .contains("value=\"IN_HAND\"", "A line manager or a quality engineer can waive")
                .doesNotContain("value=\"WAIVED\"");
        Browsing manager = Browsing.as(Cast.LINE_MANAGER);
        Map<String, Object> form = manager.form(path);
        assertThat(manager.page(path)).contains("value=\"WAIVED\"").doesNotContain("value=\"IN_HAND\"");
        form.putAll(Map.of("state", "WAIVED", "note", "Assessed at the desk"));
        assertThat(manager.send(path, form).statusCode()).isEqualTo(303);
        assertThat(manager.page(page)).contains("waived; “Assessed at the desk”", "UN R10, whole; good practice");
    }

    @Test
    void the_vehicle_is_handed_over_and_the_page_tells_what_was_given() {
        for (String id : BARRING) {
            Cast.HANDOVER_CLERK
                    .asks()
                    .contentType("application/json")
                    .body(Map.of("id", UUID.randomUUID(), "state", "IN_HAND", "reference", "N-" + id))
                    .post("/api/v1/orders/" + number + "/documents/" + id)
                    .then()
                    .statusCode(201);
        }
        SignedReceipt.of(number);
        assertThat(Browsing.as(Cast.AUDITOR).page(page)).contains("The handover clerk hands over");
        Browsing clerk = Browsing.as(Cast.HANDOVER_CLERK);
        Map<String, Object> form = clerk.form(page);
        form.put("receivedBy", "");
        Response back = clerk.send(page, form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("receivedBy-fault");
        form.put("receivedBy", "Depot foreman, receipt 4711");
        assertThat(clerk.send(page, form).statusCode()).isEqualTo(303);
        assertThat(clerk.send(page, form).statusCode()).isEqualTo(303);
        assertThat(clerk.page(page))
                .contains("To Depot foreman, receipt 4711", "Documents given over (10)", "may follow until")
                .doesNotContain("name=\"receivedBy\"", "stand against it");
        assertThat(clerk.page("/orders/" + number))
                .contains("Handed over to Depot foreman, receipt 4711, with 10 documents", "10 in hand, 0 waived")
                .contains(" to follow", number + ": Handed over to Depot foreman")
                .doesNotContain("State anew", "Nothing is open on this vehicle", "/help\"");
        assertThat(clerk.page("/handover?search=" + number)).contains("No vehicle fits");
        assertThat(clerk.page("/handover?phase=HANDED_OVER&search=" + number)).contains(page);
    }

    @ParameterizedTest
    @ValueSource(strings = {"TECHNICIAN", "AUDITOR"})
    void nobody_else_notes_documents(String person) {
        assertThat(Browsing.as(Cast.valueOf(person))
                        .get(page + "/documents/GB-01")
                        .statusCode())
                .isEqualTo(403);
    }

    @Test
    void what_is_not_there_is_missing() {
        Browsing clerk = Browsing.as(Cast.HANDOVER_CLERK);
        assertThat(clerk.get("/handover/NONE-1").statusCode()).isEqualTo(404);
        assertThat(clerk.get(page + "/documents/GB-99").statusCode()).isEqualTo(404);
    }
}
