package wainbook.station.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;

/** Giving an item to a later stage by its page, while the donor is surveyed. */
@QuarkusTest
@Tag("database")
class DeferralPageTest {

    private static final String ITEM = "engine-number";

    private String number;

    @BeforeEach
    void a_donor_is_being_surveyed() {
        Cast.assemble();
        number = "DP-" + UUID.randomUUID().toString().substring(0, 8);
        sends(
                Cast.WORKS_ENGINEER,
                "",
                Map.of(
                        "id", UUID.randomUUID(),
                        "number", number,
                        "operator", "Vale and Fen",
                        "variant", "bus-12m",
                        "route", "BUS-12M",
                        "promisedOn", "2027-02-12",
                        "facts", List.of()));
        String vin = ("WBDP" + number.substring(3).toUpperCase(Locale.ROOT) + "0000000000").substring(0, 17);
        sends(
                Cast.TECHNICIAN,
                "/" + number + "/donor",
                Map.of("id", UUID.randomUUID(), "vin", vin, "registration", "FV39 KLO", "odometerKm", 412380));
    }

    @Test
    void an_item_not_begun_is_re_sequenced_with_its_bars() {
        Browsing engineer = Browsing.as(Cast.WORKS_ENGINEER);
        assertThat(engineer.page("/station/" + number + "?item=" + ITEM))
                .contains("href=\"" + later() + "\"", "Can’t do this now");
        assertThat(engineer.page(later()))
                .contains("name=\"bars\" value=\"DRIVING\"", "Driving: the vehicle does not leave the line")
                .contains("value=\"strip\"", "value=\"commissioning\"", later() + "?way=carried-over");
        Map<String, Object> form = engineer.form(later());
        form.putAll(Map.of("toStage", "fitting", "bars", List.of("DRIVING", "LOADING"), "reason", "Plate is missing"));
        String path = later() + "/re-sequenced";
        assertThat(engineer.send(path, form).statusCode()).isEqualTo(303);
        assertThat(engineer.send(path, form).statusCode()).isEqualTo(303);
        assertThat(engineer.page("/orders/" + number))
                .contains("re-sequenced to High-voltage fitting. Plate is missing", "bars driving, bars loading");
        assertThat(engineer.page(later()))
                .contains("cannot be given to a later stage as it stands")
                .doesNotContain("name=\"toStage\"");
    }

    @Test
    void what_is_wrong_stands_at_its_field_and_nothing_typed_is_lost() {
        Browsing engineer = Browsing.as(Cast.WORKS_ENGINEER);
        Map<String, Object> form = engineer.form(later());
        form.putAll(Map.of("bars", List.of(), "reason", "Plate <is> missing"));
        Response back = engineer.send(later() + "/re-sequenced", form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString())
                .contains("id=\"toStage-fault\"", "id=\"bars-fault\"", "Plate &lt;is&gt; missing")
                .contains("value=\"" + form.get("id") + "\"");
        form.putAll(Map.of("toStage", "strip", "bars", List.of("LOADING"), "reason", ""));
        String again = engineer.send(later() + "/re-sequenced", form).asString();
        assertThat(again)
                .contains("id=\"reason-fault\"", "value=\"strip\" checked", "value=\"LOADING\" checked")
                .doesNotContain("toStage-fault", "bars-fault", "value=\"DRIVING\" checked");
    }

    @Test
    void an_item_that_can_wait_is_carried_over_to_an_owner() {
        Browsing leader = Browsing.as(Cast.TEAM_LEADER);
        String page = leader.page(later());
        assertThat(page)
                .contains("It is for: works engineer", "name=\"owner\"", Cast.SECOND_TECHNICIAN.fullName())
                .doesNotContain("name=\"bars\"", Cast.LEFT.fullName());
        Map<String, Object> form = leader.form(later());
        form.putAll(Map.of("toStage", "strip", "owner", "", "reason", "Light is bad"));
        String path = later() + "/carried-over";
        Response back = leader.send(path, form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("id=\"owner-fault\"", "Light is bad");
        form.put("owner", Cast.SECOND_TECHNICIAN.number());
        assertThat(leader.send(path, form).statusCode()).isEqualTo(303);
        assertThat(leader.page("/orders/" + number))
                .contains("carried over to Strip and decommission, owner Sam Tanner. Light is bad");
    }

    @Test
    void who_may_do_neither_finds_who_may() {
        Browsing technician = Browsing.as(Cast.TECHNICIAN);
        assertThat(technician.page("/station/" + number)).contains("Can’t do this now");
        assertThat(technician.page(later()))
                .contains("It is for: works engineer", "It is for: team leader, line manager, works engineer")
                .doesNotContain("name=\"toStage\"");
        Map<String, Object> form = technician.form(later());
        assertThat(technician.send(later() + "/re-sequenced", form).statusCode())
                .isEqualTo(403);
        assertThat(technician.send(later() + "/carried-over", form).statusCode())
                .isEqualTo(403);
        assertThat(technician.get("/station/" + number + "/no-such-item/later").statusCode())
                .isEqualTo(404);
    }

    private String later() {
        return "/station/" + number + "/" + ITEM + "/later";
    }

    private static void sends(Cast person, String path, Map<String, Object> body) {
        person.asks()
                .contentType("application/json")
                .body(body)
                .post("/api/v1/orders" + path)
                .then()
                .statusCode(201);
    }
}
