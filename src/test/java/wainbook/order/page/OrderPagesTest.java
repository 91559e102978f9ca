package wainbook.order.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.order.OrderSaying;

@QuarkusTest
@Tag("database")
class OrderPagesTest {

    private String number;

    @BeforeEach
    void the_cast_is_there() {
        Cast.assemble();
        number = "OP-" + UUID.randomUUID().toString().substring(0, 8);
    }

    @Test
    void a_new_order_is_made_and_found_in_the_list_and_its_file() {
        Browsing engineer = made();
        assertThat(engineer.page("/orders?search=" + number)).contains(number, "ordered, no donor yet");
        assertThat(engineer.page("/orders?search=" + number + "&phase=ON_LINE"))
                .contains("No work order fits")
                .doesNotContain("/orders/" + number);
        assertThat(engineer.page("/orders.csv?search=" + number))
                .startsWith("number,operator,kind")
                .contains(number);
    }

    @Test
    void an_order_sent_twice_is_written_once() {
        Browsing engineer = Browsing.as(Cast.WORKS_ENGINEER);
        Map<String, Object> form = engineer.form("/orders/new");
        fill(form);
        assertThat(engineer.send("/orders/new", form).statusCode()).isEqualTo(303);
        Response again = engineer.send("/orders/new", form);
        assertThat(again.statusCode()).isEqualTo(303);
        assertThat(again.header("Location")).endsWith("/orders/" + number);
        assertThat(entries()).hasSize(4);
    }

    @Test
    void nothing_more_is_stated_of_a_vehicle_that_was_handed_over() {
        OnRecord bus = OnRecord.accepted().at("strip", "ST-1");
        Browsing engineer = Browsing.as(Cast.WORKS_ENGINEER);
        String path = "/orders/" + bus.number() + "/facts";
        Map<String, Object> form = engineer.form(path + "?fact=packs");
        form.put("stated", "3");
        bus.out();
        bus.say(new OrderSaying.HandedOver("Depot", List.of()));
        assertThat(engineer.page(path + "?fact=packs"))
                .contains("Nothing more can be stated of " + bus.number())
                .doesNotContain("name=\"stated\"");
        assertThat(engineer.send(path, form).statusCode()).isEqualTo(409);
        assertThat(bus.history().saying(OrderSaying.FactStated.class))
                .extracting(entry -> ((OrderSaying.FactStated) entry.saying()).stated())
                .doesNotContain("3");
    }

    @Test
    void a_faulty_order_comes_back_with_what_was_typed_and_a_word_at_each_fault() {
        Browsing engineer = Browsing.as(Cast.WORKS_ENGINEER);
        Map<String, Object> form = engineer.form("/orders/new");
        fill(form);
        form.put("number", "no number");
        form.put("promisedOn", "soon");
        Response back = engineer.send("/orders/new", form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString())
                .contains("value=\"no number\"", "value=\"Vale and Fen\"", "id=\"number-fault\"", "promisedOn-fault")
                .contains((String) form.get("id"));
    }

    @Test
    void a_number_that_is_taken_is_said_at_its_field() {
        Browsing engineer = made();
        Map<String, Object> form = engineer.form("/orders/new");
        fill(form);
        Response back = engineer.send("/orders/new", form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("is there already");
    }

    @ParameterizedTest
    @EnumSource(names = {"TECHNICIAN", "INSPECTOR", "QUALITY_ENGINEER", "AUDITOR"})
    void nobody_else_makes_orders(Cast person) {
        assertThat(Browsing.as(person).get("/orders/new").statusCode()).isEqualTo(403);
    }

    @Test
    void a_form_without_its_token_is_turned_away() {
        Browsing engineer = Browsing.as(Cast.WORKS_ENGINEER);
        Map<String, Object> form = engineer.form("/orders/new");
        form.keySet().removeIf(name -> name.startsWith("csrf"));
        fill(form);
        Response turnedAway = engineer.send("/orders/new", form);
        assertThat(turnedAway.statusCode()).isEqualTo(400);
        assertThat(turnedAway.asString())
                .contains("Nothing was recorded", "Go back: what you typed still stands there");
    }

    @Test
    void a_form_stays_good_while_other_pages_are_opened_beside_it() {
        Browsing engineer = Browsing.as(Cast.WORKS_ENGINEER);
        Map<String, Object> form = engineer.form("/orders/new");
        engineer.form("/matters");
        engineer.page("/line");
        fill(form);
        assertThat(engineer.send("/orders/new", form).statusCode()).isEqualTo(303);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/orders", "/orders/new", "/line", "/matters", "/orders/WB-1"})
    void whoever_is_not_signed_in_is_sent_to_sign_in(String path) {
        Response answer =
                io.restassured.RestAssured.given().redirects().follow(false).get(path);
        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(answer.header("Location")).contains("/sign-in");
    }

    @Test
    void a_donor_is_received_once_and_then_its_form_gives_way_to_the_reason() {
        made();
        Browsing technician = Browsing.as(Cast.TECHNICIAN);
        String path = "/orders/" + number + "/donor";
        Map<String, Object> form = technician.form(path);
        form.putAll(Map.of("vin", "short", "registration", "FV39 KLO", "odometerKm", "far"));
        assertThat(technician.send(path, form).asString()).contains("value=\"far\"", "odometerKm-fault");
        form.put("odometerKm", "412380");
        assertThat(technician.send(path, form).asString()).contains("value=\"short\"", "vin-fault");
        form.put("vin", vin());
        assertThat(technician.send(path, form).statusCode()).isEqualTo(303);
        assertThat(technician.send(path, form).statusCode()).isEqualTo(303);
        assertThat(technician.page(path)).contains("has its donor").doesNotContain("name=\"vin\"");
    }

    @Test
    void a_fact_is_stated_in_its_type() {
        Browsing engineer = made();
        String path = "/orders/" + number + "/facts";
        Map<String, Object> form = engineer.form(path + "?fact=packs");
        form.put("stated", "six");
        assertThat(engineer.send(path, form).statusCode()).isEqualTo(422);
        form.put("stated", "6");
        assertThat(engineer.send(path, form).statusCode()).isEqualTo(303);
        assertThat(engineer.page("/orders/" + number)).contains("Battery packs");
        assertThat(engineer.get(path + "?fact=shoe_size").statusCode()).isEqualTo(404);
    }

    @Test
    void a_hold_is_put_on_by_a_technician_and_released_by_whom_its_kind_names() {
        made();
        Browsing technician = Browsing.as(Cast.TECHNICIAN);
        String path = "/orders/" + number + "/hold";
        Map<String, Object> form = technician.form(path);
        form.putAll(Map.of("kind", "QUALITY", "reason", ""));
        Response back = technician.send(path, form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("reason-fault", "Choose what it stops");
        form.putAll(Map.of("stops", List.of("SIGN", "MOVE"), "reason", "Chassis number to be compared"));
        assertThat(technician.send(path, form).statusCode()).isEqualTo(303);
        assertThat(technician.get("/orders/" + number + "/holds/1/release").statusCode())
                .isEqualTo(403);

        String release = "/orders/" + number + "/holds/1/release";
        assertThat(Browsing.as(Cast.LINE_MANAGER).page(release))
                .contains("You cannot release hold 1")
                .doesNotContain("name=\"reason\"");
        Browsing quality = Browsing.as(Cast.QUALITY_ENGINEER);
        Map<String, Object> why = quality.form(release);
        why.put("reason", "Compared, and equal");
        assertThat(quality.send(release, why).statusCode()).isEqualTo(303);
        assertThat(quality.send(release, why).statusCode()).isEqualTo(303);
        assertThat(quality.page("/orders/" + number)).contains("Nothing is open on this vehicle");
    }

    private Browsing made() {
        Browsing engineer = Browsing.as(Cast.WORKS_ENGINEER);
        Map<String, Object> form = engineer.form("/orders/new");
        fill(form);
        assertThat(engineer.send("/orders/new", form).statusCode()).isEqualTo(303);
        return engineer;
    }

    private void fill(Map<String, Object> form) {
        form.keySet().removeIf(name -> name.equals("fact"));
        form.putAll(Map.of(
                "number", number,
                "operator", "Vale and Fen",
                "variant", "bus-12m",
                "route", "BUS-12M",
                "promisedOn", "2027-02-12",
                "fact", List.of("wheelchair_ramp", "air_conditioning"),
                "stated", List.of("true", "")));
    }

    private String vin() {
        return ("WBTEST"
                        + number.substring(3).toUpperCase(java.util.Locale.ROOT).replace('O', '0') + "00000000")
                .substring(0, 17);
    }

    private List<Object> entries() {
        return Cast.AUDITOR
                .asks()
                .get("/api/v1/ledger/streams/work-order/" + number)
                .jsonPath()
                .getList("lines");
    }
}
