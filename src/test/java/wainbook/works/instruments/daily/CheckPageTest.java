package wainbook.works.instruments.daily;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;

/** A wrench and a tester of the test's own. */
@QuarkusTest
class CheckPageTest {

    private final String wrench = "TW-" + UUID.randomUUID().toString().substring(0, 8);
    private final String tester = "TT-" + UUID.randomUUID().toString().substring(0, 8);
    private Browsing technician;

    @BeforeEach
    void a_wrench_and_a_tester() {
        Cast.assemble();
        Browsing engineer = Browsing.as(Cast.WORKS_ENGINEER);
        put(engineer, wrench, "torque-setting", "3");
        put(engineer, tester, "torque-tester", "1");
        technician = Browsing.as(Cast.TECHNICIAN);
    }

    @Test
    void three_pulls_near_the_days_work_find_it_good() {
        assertThat(check("100", "99.8 100.1 99.9").statusCode()).isEqualTo(303);
        assertThat(technician.page("/instruments/" + wrench + "/checks"))
                .contains("checks before work: good", "99.8 · 100.1 · 99.9", tester);
    }

    @Test
    void one_that_fails_is_withdrawn_at_once() {
        assertThat(check("100", "94.8 95.1 94.9").statusCode()).isEqualTo(303);
        assertThat(technician.page("/instruments/" + wrench)).contains(": withdrawn", "Check before work: error 5.");
        assertThat(technician.page("/instruments/" + wrench + "/checks")).doesNotContain("Keep the check");
    }

    @Test
    void what_is_no_check_is_refused_at_its_field_and_nothing_typed_is_lost() {
        Response back = check("300", "99.8 100.1");
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("id=\"target-fault\"", "id=\"references-fault\"", "value=\"99.8 100.1\"");
    }

    @Test
    void no_wrench_checks_a_wrench() {
        Map<String, Object> form = technician.form("/instruments/" + wrench + "/checks");
        form.putAll(Map.of("tester", wrench, "target", "100", "references", "100 100 100"));
        assertThat(technician.send("/instruments/" + wrench + "/checks", form).asString())
                .contains("id=\"tester-fault\"");
    }

    private Response check(String target, String references) {
        Map<String, Object> form = technician.form("/instruments/" + wrench + "/checks");
        form.putAll(Map.of("tester", tester, "target", target, "references", references));
        return technician.send("/instruments/" + wrench + "/checks", form);
    }

    private static void put(Browsing engineer, String code, String kind, String accuracy) {
        Map<String, Object> form = engineer.form("/instruments/new");
        form.putAll(Map.of("code", code, "kind", kind, "title", kind, "unit", "N·m", "lower", "20", "upper", "200"));
        form.put("accuracyPercent", accuracy);
        engineer.send("/instruments/new", form);
        Map<String, Object> calibration = engineer.form("/instruments/" + code + "/calibrations/new");
        calibration.putAll(Map.of("on", "2026-01-05", "due", "2036-01-05", "certificate", "C-1"));
        engineer.send("/instruments/" + code + "/calibrations", calibration);
    }
}
