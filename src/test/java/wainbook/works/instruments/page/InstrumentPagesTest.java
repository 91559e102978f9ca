package wainbook.works.instruments.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.works.instruments.page.InstrumentViews.Standing;

/** An instrument of the test's own from the register to its withdrawal. */
@QuarkusTest
class InstrumentPagesTest {

    private String code;
    private Browsing engineer;

    @BeforeEach
    void a_new_instrument() {
        Cast.assemble();
        code = "GA-" + UUID.randomUUID().toString().substring(0, 8);
        engineer = Browsing.as(Cast.WORKS_ENGINEER);
        Map<String, Object> form = engineer.form("/instruments/new");
        form.putAll(Map.of(
                "code", code, "kind", "gap-gauge", "title", "Gap gauge", "unit", "mm", "lower", "0", "upper", "5"));
        form.put("accuracyPercent", "1.5");
        assertThat(engineer.send("/instruments/new", form).header("Location")).endsWith("/instruments/" + code);
    }

    @Test
    void it_is_unusable_until_its_first_calibration_and_found_by_kind() {
        assertThat(engineer.page("/instruments/" + code)).contains("never calibrated", "0 to 5 mm");
        assertThat(engineer.page("/instruments?kind=gap-gauge&standing=NEVER_CALIBRATED"))
                .contains(code);
        assertThat(engineer.page("/instruments/instruments.csv?search=" + code)).contains("gap-gauge,\"Gap gauge\"");
        assertThat(calibrate("2026-01-05", "2036-01-05", "C-9").statusCode()).isEqualTo(303);
        assertThat(engineer.page("/instruments/" + code)).contains("usable", "C-9", "5 Jan 2036");
        assertThat(engineer.page("/instruments?kind=gap-gauge&standing=NEVER_CALIBRATED"))
                .doesNotContain("/instruments/" + code);
    }

    @ParameterizedTest
    @CsvSource({
        "2999-01-01, 2999-06-01, C-9, on",
        "2026-01-05, 2026-01-05, C-9, due",
        "2026-01-05, 2026-01-04, C-9, due",
        "2026-01-05, soon,       C-9, due",
        "2026-01-05, 2026-06-01, '',  certificate"
    })
    void a_calibration_that_cannot_be_is_refused_at_its_field(String on, String due, String certificate, String field) {
        Response back = calibrate(on, due, certificate);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("id=\"" + field + "-fault\"");
        assertThat(engineer.page("/instruments/" + code)).contains("never calibrated");
    }

    @Test
    void a_technician_withdraws_what_was_dropped_and_records_no_calibration() {
        calibrate("2026-01-05", "2036-01-05", "C-9");
        Browsing technician = Browsing.as(Cast.TECHNICIAN);
        Map<String, Object> form = technician.form("/instruments/" + code);
        assertThat(technician.page("/instruments/" + code)).doesNotContain("Record a calibration");
        form.put("cause", "DAMAGED");
        form.put("reason", "");
        assertThat(technician.send("/instruments/" + code + "/withdrawal", form).statusCode())
                .isEqualTo(422);
        form.put("reason", "Fell from the trolley");
        assertThat(technician.send("/instruments/" + code + "/withdrawal", form).statusCode())
                .isEqualTo(303);
        assertThat(technician.page("/instruments/" + code))
                .contains("Withdrawn: Fell from the trolley", "What was done with it", "/trace?q=" + code);
        assertThat(calibrate("2026-01-06", "2036-01-05", "C-10").asString())
                .contains("It says nothing of what happened since");
        calibrate(LocalDate.now(ZoneOffset.UTC).toString(), "2036-01-05", "C-10");
        assertThat(engineer.page("/instruments/" + code)).contains(": usable");
    }

    @Test
    void a_code_is_one_instruments_only() {
        Map<String, Object> form = engineer.form("/instruments/new");
        form.putAll(Map.of(
                "code", code, "kind", "gap-gauge", "title", "Another", "unit", "mm", "lower", "6", "upper", "5"));
        form.put("accuracyPercent", "");
        Response back = engineer.send("/instruments/new", form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("id=\"code-fault\"", "id=\"upper-fault\"", "Another");
    }

    @ParameterizedTest
    @CsvSource({"2026-03-01, OVERDUE", "2026-03-02, DUE_SOON", "2026-03-31, DUE_SOON", "2026-04-01, USABLE"})
    void the_due_day_is_the_last_good_one_and_thirty_days_ahead_it_is_said(LocalDate due, Standing standing) {
        assertThat(Standing.of(false, due, LocalDate.of(2026, 3, 2))).isEqualTo(standing);
        assertThat(Standing.of(true, due, LocalDate.of(2026, 3, 2))).isEqualTo(Standing.WITHDRAWN);
    }

    private Response calibrate(String on, String due, String certificate) {
        Map<String, Object> form = engineer.form("/instruments/" + code + "/calibrations/new");
        form.putAll(Map.of("on", on, "due", due, "certificate", certificate));
        return engineer.send("/instruments/" + code + "/calibrations", form);
    }
}
