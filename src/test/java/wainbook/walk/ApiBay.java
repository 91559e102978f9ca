package wainbook.walk;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wainbook.walk.Hands.Answer;

/** At the handover bay by the API. */
record ApiBay(ApiHands hands, Vehicle vehicle, WalkClock clock) implements Bay {

    @Override
    public Answer read(String user, int odometerKm) {
        return post(user, "/state", Map.of("odometerKm", odometerKm, "chargePercent", 84, "bay", "Bay 1"));
    }

    @Override
    public Answer pictured(String user) {
        String sha256 = ApiHands.as("leilani")
                .contentType("image/png")
                .body(Picture.PNG)
                .post("/api/v1/orders/" + vehicle.order() + "/files")
                .jsonPath()
                .getString("sha256");
        return post(user, "/pictures", Map.of("place", "Nearside", "remark", "Scratch", "sha256", sha256));
    }

    @Override
    public Answer given(String user) {
        return post(user, "/things", Map.of("things", List.of(Map.of("thing", "Vehicle keys", "count", 2))));
    }

    @Override
    public Answer instructed(String user) {
        return post(
                user,
                "/instructions",
                Map.of(
                        "driverNames",
                        List.of("Alex Sample"),
                        "workshopNames",
                        List.of("Kim Specimen"),
                        "by",
                        "W-1007",
                        "topics",
                        List.of("Charging and its faults"),
                        "on",
                        today().toString()));
    }

    @Override
    public Answer warranty(String user, int odometerKm) {
        return post(
                user,
                "/warranty",
                Map.of("from", today().toString(), "odometerKm", odometerKm, "covers", "Conversion, 24 months"));
    }

    @Override
    public Answer snag(String user, String defect) {
        return post(
                user,
                "/snags",
                Map.of(
                        "defect",
                        defect,
                        "place",
                        "Offside",
                        "withName",
                        "Robin Invented",
                        "owner",
                        "W-1007",
                        "remedy",
                        "Touch it up",
                        "dueOn",
                        today().plusDays(30).toString()));
    }

    @Override
    public Answer closed(String user, int snag) {
        return post(user, "/snags/" + snag + "/closing", Map.of("done", "Touched up at the first service"));
    }

    @Override
    public Answer signed(String user, boolean drawn) {
        Map<String, Object> signing = new HashMap<>(Map.of(
                "content", content(user), "name", "Robin Invented", "role", "Depot foreman", "firm", "Vale and Fen"));
        if (drawn) {
            var stroke = new ArrayList<List<Integer>>();
            for (int x = 100; x <= 900; x += 40) {
                stroke.add(List.of(x, x % 80 == 0 ? 80 : 220));
            }
            signing.putAll(Map.of("manner", "DRAWN", "strokes", List.of(stroke)));
        } else {
            signing.putAll(Map.of("manner", "TYPED", "confirmed", true));
        }
        return post(user, "/receipts", signing);
    }

    @Override
    public Answer nobodySigns(String user, String witness, String password) {
        return post(
                user,
                "/receipts/missing",
                Map.of(
                        "content",
                        content(user),
                        "absence",
                        "NOT_PRESENT",
                        "reason",
                        "Fetched before the depot opened",
                        "witness",
                        witness,
                        "password",
                        password));
    }

    private String content(String user) {
        return ApiHands.as(user)
                .get("/api/v1/orders/" + vehicle.order() + "/handover-record")
                .jsonPath()
                .getString("content");
    }

    private Answer post(String user, String path, Map<String, Object> fields) {
        return hands.post(user, "/handover-record" + path, fields);
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
    }
}
