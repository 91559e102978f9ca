package wainbook.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The usual parts of an isolation of the demo bus, done well: amara isolates, arjun witnesses, ewa issues. */
record Isolating(Hands hands, WalkClock clock) {

    static final List<String> LOOKED_FOR = List.of("INLET-DC", "LV-24V", "WHEELS", "CAPACITORS", "PACK-1", "PACK-2");
    private static final List<String> RAILS = List.of("PLUS_MINUS", "PLUS_CHASSIS", "MINUS_CHASSIS");
    private static final List<String> PHASES = List.of("PHASE_U_V", "PHASE_V_W", "PHASE_W_U");

    void does(String user, String step, Map<String, Object> with) {
        clock.pass(Duration.ofSeconds(6));
        Hands.Answer answer = hands.step(user, step, with);
        assertThat(answer.done())
                .as(user + " " + step + " " + with + " " + answer)
                .isTrue();
    }

    void secured(List<String> sources) {
        planned();
        shutDown();
        opened(sources);
        locked("amara", "LK-01", "TG-01");
    }

    void planned() {
        does("amara", "plan", Map.of("confirmed", List.of("DAMAGE_LOOKED_FOR", "AREA_BARRIERED")));
    }

    void shutDown() {
        does(
                "amara",
                "shut-down",
                Map.of(
                        "box",
                        "LB-3",
                        "keys",
                        List.of("KY-01"),
                        "confirmed",
                        List.of("STATIONARY", "WHEELS_CHOCKED", "INLET_UNPLUGGED", "CAB_EMPTY", "KEYS_IN_BOX")));
    }

    void opened(List<String> sources) {
        sources.forEach(source -> does("amara", "open-source", Map.of("source", source, "shownOpen", "true")));
    }

    void locked(String user, String lock, String tag) {
        does(user, "lock-on", Map.of("lock", lock, "tag", tag));
    }

    void testerProvedBefore() {
        does(
                "amara",
                "prove-tester-before",
                Map.of(
                        "scope",
                        "ALL_POINTS",
                        "testerCode",
                        "VT-01",
                        "sourceCode",
                        "PU-01",
                        "sourceVolt",
                        "240",
                        "readingVolt",
                        "239"));
    }

    void pointsMeasured(List<String> points) {
        points.forEach(point -> does("amara", "measure-point", reading(point, "0.3")));
        clock.pass(Duration.ofSeconds(60));
        points.forEach(point -> does("amara", "measure-point-again", reading(point, "0.4")));
    }

    void testerProvedAfter() {
        does(
                "amara",
                "prove-tester-after",
                Map.of("testerCode", "VT-01", "sourceCode", "PU-01", "sourceVolt", "240", "readingVolt", "241"));
    }

    void provedDead(List<String> points) {
        testerProvedBefore();
        pointsMeasured(points);
        testerProvedAfter();
        does("arjun", "witness-proof", Map.of());
    }

    void permitOut(int number, String work, String point) {
        does("ewa", "issue-permit", permit("linh", work, point));
        does("linh", "read-paper", Map.of("paper", String.valueOf(number)));
    }

    static Map<String, Object> permit(String receiver, String work, String point) {
        String number = Map.of("linh", "W-1003", "amara", "W-1001").get(receiver);
        return Map.of(
                "receiver",
                number,
                "what",
                work,
                "excluded",
                "everything else",
                "hazards",
                "pack terminals stay live",
                "pointsOfWork",
                List.of(point),
                "confirmed",
                List.of("ADJACENT_PARTS_SHROUDED"));
    }

    static Map<String, Object> reading(String point, String volt) {
        var pairs = new ArrayList<>(RAILS);
        if (point.equals("TP-MOTOR")) {
            pairs.addAll(PHASES);
        }
        return Map.of(
                "point",
                point,
                "tester",
                "VT-01",
                "readings",
                pairs.stream().map(pair -> Map.of("pair", pair, "volt", volt)).toList());
    }

    void checked(List<String> checks) {
        checks.forEach(check ->
                does("mateo", "check-restoration", Map.of("check", check, "passed", "true", "note", "looked at")));
    }
}
