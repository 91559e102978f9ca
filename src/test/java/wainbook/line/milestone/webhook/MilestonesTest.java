package wainbook.line.milestone.webhook;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpServer;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.ledger.Ledger;
import wainbook.ledger.NewerTables;
import wainbook.ledger.Rebuild;
import wainbook.ledger.Subject;
import wainbook.line.milestone.Milestone;
import wainbook.line.milestone.MilestoneRow;
import wainbook.line.milestone.webhook.Delivery.Fault;
import wainbook.line.milestone.webhook.Delivery.State;

/** A bus that passes milestones, and a receiver in this machine that is told of them. */
@QuarkusTest
@Tag("database")
class MilestonesTest {

    private static final String PAGE = "/milestones/webhooks";

    private record Received(String time, String signature, String body) {}

    @Inject
    Round round;

    @Inject
    Sending sending;

    @Inject
    Ledger ledger;

    @Inject
    Rebuild rebuild;

    @Inject
    NewerTables newer;

    @Inject
    EntityManager entities;

    private final List<Received> received = Collections.synchronizedList(new ArrayList<>());
    private HttpServer receiver;
    private int status = 204;
    private int webhook;
    private String secret;
    private Browsing engineer;

    @BeforeEach
    void a_receiver_is_told() throws IOException {
        Cast.assemble();
        engineer = Browsing.as(Cast.WORKS_ENGINEER);
        receiver = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        receiver.createContext("/milestones", exchange -> {
            received.add(new Received(
                    exchange.getRequestHeaders().getFirst(Signature.TIME_HEADER),
                    exchange.getRequestHeaders().getFirst(Signature.HEADER),
                    new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8)));
            exchange.getResponseHeaders().add("Location", "/elsewhere");
            exchange.sendResponseHeaders(status, -1);
            exchange.close();
        });
        receiver.createContext("/elsewhere", exchange -> {
            received.add(new Received("followed", "", ""));
            exchange.sendResponseHeaders(204, -1);
            exchange.close();
        });
        receiver.start();
        String page = added("http://localhost:" + receiver.getAddress().getPort() + "/milestones");
        secret = page.replaceAll("(?s).*<code class=\"secret\">([^<]+)</code>.*", "$1");
        webhook = Webhooks.of(ledger.history(Subject.works())).last();
    }

    private String added(String address) {
        Map<String, Object> form = engineer.form(PAGE);
        form.put("address", address);
        form.put("milestones", List.of("INTAKE", "STRIPPED", "HANDED_OVER"));
        return engineer.send(PAGE, form).asString();
    }

    @AfterEach
    void the_receiver_goes() {
        receiver.stop(0);
        Map<String, Object> form = engineer.form(PAGE);
        engineer.send(PAGE + "/" + webhook + "/end", form);
        round.at(Instant.now().plus(Duration.ofDays(30)));
    }

    @Test
    void a_works_that_is_older_than_its_milestones_has_them_at_its_first_start_and_tells_nobody_twice() {
        OnRecord bus = OnRecord.accepted();
        long told = QuarkusTransaction.requiringNew().call(() -> Delivery.count("workOrder = ?1", bus.number()));
        QuarkusTransaction.requiringNew().run(() -> {
            MilestoneRow.delete("workOrder = ?1", bus.number());
            entities.createNativeQuery("delete from made_by where tables = 'milestone'")
                    .executeUpdate();
        });

        assertThat(newer.make()).containsExactly("milestone");

        assertThat(QuarkusTransaction.requiringNew().call(() -> MilestoneRow.of(List.of(bus.number()))))
                .extracting(row -> row.milestone)
                .containsExactly(Milestone.INTAKE);
        assertThat(QuarkusTransaction.requiringNew().call(() -> Delivery.count("workOrder = ?1", bus.number())))
                .isEqualTo(told);
        assertThat(newer.make()).isEmpty();
    }

    @Test
    void a_milestone_is_told_once_signed_and_without_a_name() {
        OnRecord bus = OnRecord.accepted();
        Delivery noted = delivery(bus, Milestone.INTAKE);
        assertThat(noted.state).isEqualTo(State.WAITING);

        assertThat(round.at(noted.nextAt)).isPositive();
        assertThat(round.at(noted.nextAt.plusSeconds(5))).isZero();

        assertThat(received).hasSize(1);
        Received message = received.get(0);
        assertThat(message.signature()).isEqualTo(Signature.of(secret, message.time(), message.body()));
        assertThat(message.body())
                .contains("\"id\":\"" + noted.entry + "\"", "\"order\":\"" + bus.number() + "\"", "\"INTAKE\"")
                .doesNotContain(Cast.WORKS_ENGINEER.number(), bus.vin());
        assertThat(delivery(bus, Milestone.INTAKE).state).isEqualTo(State.DELIVERED);
        assertThat(engineer.page(PAGE)).contains(bus.number(), "delivered").doesNotContain(secret);
    }

    @Test
    void what_fails_waits_longer_each_time_until_it_is_given_up_and_tried_again_by_hand() {
        status = 503;
        OnRecord bus = OnRecord.accepted();
        Instant now = delivery(bus, Milestone.INTAKE).nextAt;
        var waits = new ArrayList<Duration>();
        for (int i = 0; i < 7; i++) {
            round.at(now);
            Delivery failed = delivery(bus, Milestone.INTAKE);
            assertThat(failed.fault).isEqualTo(Fault.ANSWERED);
            waits.add(Duration.between(now, failed.nextAt));
            now = failed.nextAt;
        }
        assertThat(waits).isSorted().doesNotHaveDuplicates();
        round.at(now);
        assertThat(delivery(bus, Milestone.INTAKE).state).isEqualTo(State.GIVEN_UP);
        assertThat(engineer.page(PAGE)).contains("given up", "The receiver answered 503");

        status = 200;
        Map<String, Object> form = engineer.form(PAGE);
        form.put("delivery", delivery(bus, Milestone.INTAKE).id);
        assertThat(engineer.send(PAGE + "/again", form).statusCode()).isEqualTo(303);
        round.at(delivery(bus, Milestone.INTAKE).nextAt);

        assertThat(delivery(bus, Milestone.INTAKE).state).isEqualTo(State.DELIVERED);
        assertThat(received.stream().map(Received::body).distinct()).hasSize(1);
    }

    @Test
    void what_was_sent_and_not_noted_is_sent_again_with_the_same_id() {
        OnRecord bus = OnRecord.accepted();
        Instant now = delivery(bus, Milestone.INTAKE).nextAt;
        var failing = new Round(ledger, message -> {
            sending.send(message);
            throw new IllegalStateException("the program ends here");
        });

        failing.at(now);
        assertThat(delivery(bus, Milestone.INTAKE).fault).isEqualTo(Fault.NOT_KNOWN);
        round.at(delivery(bus, Milestone.INTAKE).nextAt);

        assertThat(received).hasSize(2);
        assertThat(received.get(0).body()).isEqualTo(received.get(1).body());
        assertThat(received.get(0).signature()).isNotEqualTo(received.get(1).signature());
        assertThat(delivery(bus, Milestone.INTAKE).state).isEqualTo(State.DELIVERED);
    }

    @Test
    void a_redirect_is_a_failure_and_is_not_followed() {
        status = 302;
        OnRecord bus = OnRecord.accepted();

        round.at(delivery(bus, Milestone.INTAKE).nextAt);

        assertThat(delivery(bus, Milestone.INTAKE).fault).isEqualTo(Fault.REDIRECTED);
        assertThat(received).extracting(Received::time).doesNotContain("followed");
    }

    @Test
    void an_address_that_is_off_keeps_waiting_and_keeps_nobody_else_waiting() {
        OnRecord before = OnRecord.accepted();
        switched(false);
        OnRecord bus = OnRecord.accepted();

        assertThat(round.at(Instant.now().plusSeconds(60))).isZero();
        assertThat(deliveries(bus)).isEmpty();
        switched(true);
        assertThat(round.at(Instant.now().plusSeconds(60))).isEqualTo(1);
        assertThat(delivery(before, Milestone.INTAKE).state).isEqualTo(State.DELIVERED);
    }

    @Test
    void an_address_into_the_works_is_refused_and_what_was_typed_stays() {
        assertThat(added("http://10.0.0.1/milestones"))
                .contains("needs https", "value=\"http://10.0.0.1/milestones\"")
                .doesNotContain("class=\"secret\"");
        Map<String, Object> form = engineer.form(PAGE);
        form.put("address", "https://fleet.example/");
        form.remove("milestones");
        assertThat(engineer.send(PAGE, form).asString()).contains("Tick one milestone at least");
        assertThat(Browsing.as(Cast.TECHNICIAN).get(PAGE).statusCode()).isEqualTo(403);
    }

    @Test
    void milestones_stand_in_the_list_its_file_and_the_api_and_a_rebuild_tells_nobody_twice() {
        OnRecord bus = OnRecord.accepted().at("strip", "ST-1").signed();
        bus.out();

        assertThat(engineer.page("/milestones?search=" + bus.number())).contains(bus.number(), "Strip done");
        assertThat(engineer.page("/milestones/file.csv?search=" + bus.number() + "&milestone=STRIPPED"))
                .contains(bus.number() + ",", ",STRIPPED,", ",HANDED_OVER,");
        assertThat(engineer.page("/milestones?search=" + bus.number() + "&milestone=HANDED_OVER"))
                .contains("No order fits");
        assertThat(engineer.page("/milestones?search=" + bus.number() + "&from=soon"))
                .contains("This is no day");
        List<String> noted = deliveries(bus);
        List<String> rows = rows(bus);
        assertThat(noted).hasSize(2);
        assertThat(rows).hasSize(2);

        rebuild.everything();

        assertThat(deliveries(bus)).isEqualTo(noted);
        assertThat(rows(bus)).isEqualTo(rows);
    }

    private void switched(boolean on) {
        engineer.send(
                PAGE + "/" + webhook + "/switch",
                with(engineer.form(PAGE), Map.of("id", UUID.randomUUID().toString(), "on", String.valueOf(on))));
    }

    private static Map<String, Object> with(Map<String, Object> form, Map<String, Object> more) {
        form.putAll(more);
        return form;
    }

    private List<String> rows(OnRecord bus) {
        return QuarkusTransaction.requiringNew()
                .call(() -> MilestoneRow.of(List.of(bus.number())).stream()
                        .map(row -> row.milestone + " " + row.reachedAt + " " + row.entry + " " + row.entryNumber)
                        .sorted()
                        .toList());
    }

    private List<String> deliveries(OnRecord bus) {
        return QuarkusTransaction.requiringNew()
                .call(() -> Delivery.<Delivery>list("workOrder = ?1 and webhook = ?2", bus.number(), webhook).stream()
                        .map(row -> row.id + " " + row.milestone + " " + row.state + " " + row.tries)
                        .sorted()
                        .toList());
    }

    private Delivery delivery(OnRecord bus, Milestone milestone) {
        return QuarkusTransaction.requiringNew()
                .call(() -> Delivery.<Delivery>find(
                                "workOrder = ?1 and milestone = ?2 and webhook = ?3", bus.number(), milestone, webhook)
                        .singleResult());
    }
}
