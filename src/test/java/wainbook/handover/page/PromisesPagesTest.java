package wainbook.handover.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.order.promise.Promise;

/** What an operator was promised stands on the order with its evidence, or 'not yet', and bars where it was promised before handover. */
@QuarkusTest
@Tag("database")
class PromisesPagesTest {

    private OnRecord bus;
    private String path;
    private Browsing manager;

    @BeforeEach
    void a_bus_is_accepted() {
        Cast.assemble();
        bus = OnRecord.accepted();
        path = "/orders/" + bus.number() + "/promises";
        manager = Browsing.as(Cast.LINE_MANAGER);
    }

    @Test
    void a_promise_before_handover_bars_until_it_is_kept_or_withdrawn() {
        assertThat(promise("Handbook in two languages", "", "GB-40", true).statusCode())
                .isEqualTo(303);
        assertThat(manager.page(path)).contains("Handbook in two languages", "not yet, keeps the vehicle here");
        assertThat(manager.page("/orders/" + bus.number())).contains("Handbook in two languages");
        assertThat(manager.page("/handover/" + bus.number())).contains("Promise 1 is not kept", "1 not yet kept");
        Map<String, Object> form = fresh();
        assertThat(manager.send(path + "/1/withdrawal", form).statusCode()).isIn(409, 422);
        form.put("reason", "The operator has one");
        assertThat(manager.send(path + "/1/withdrawal", form).statusCode()).isEqualTo(303);
        assertThat(manager.page("/handover/" + bus.number())).doesNotContain("Promise 1 is not kept");
        assertThat(manager.page(path)).contains("withdrawn", "The operator has one");
    }

    @Test
    void a_promise_that_may_follow_is_a_warning_and_no_bar() {
        promise("Seats reupholstered", "", "GB-40", false);
        assertThat(manager.page("/handover/" + bus.number()))
                .contains("1 not yet kept", "Seats reupholstered")
                .doesNotContain("Promise 1 is not kept");
    }

    @Test
    void a_promise_names_what_will_prove_it() {
        assertThat(promise("Looms protected", "", "", false).asString())
                .contains("Nothing is named that will prove it");
        assertThat(promise("Looms protected", "no-such-item", "", false).asString())
                .contains("No sheet of this order’s route has an item", "value=\"Looms protected\"");
        assertThat(promise("", "", "handbook", false).statusCode()).isEqualTo(422);
        assertThat(Promise.of(bus.history())).isEmpty();
    }

    @Test
    void sent_twice_it_is_written_once_and_others_only_read() {
        Map<String, Object> form = form("Handbook", "", "GB-40", false);
        assertThat(manager.send(path, form).statusCode()).isEqualTo(303);
        assertThat(manager.send(path, form).statusCode()).isEqualTo(303);
        assertThat(Promise.of(bus.history())).hasSize(1);
        assertThat(Browsing.as(Cast.AUDITOR).page(path)).contains("Handbook").doesNotContain("Put it on record");
    }

    private Response promise(String option, String items, String documents, boolean before) {
        return manager.send(path, form(option, items, documents, before));
    }

    private Map<String, Object> form(String option, String items, String documents, boolean before) {
        Map<String, Object> form = fresh();
        form.put("option", option);
        form.put("items", items);
        form.put("documents", documents);
        if (before) {
            form.put("beforeHandover", "true");
        }
        return form;
    }

    private Map<String, Object> fresh() {
        Map<String, Object> form = manager.form(path);
        form.keySet().removeIf(name -> !name.startsWith("csrf"));
        form.put("id", UUID.randomUUID().toString());
        return form;
    }
}
