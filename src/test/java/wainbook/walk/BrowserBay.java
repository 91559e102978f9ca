package wainbook.walk;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.FilePayload;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import wainbook.walk.Hands.Answer;

/** At the handover bay by the pages. */
record BrowserBay(BrowserHands hands, Vehicle vehicle, WalkClock clock) implements Bay {

    @Override
    public Answer read(String user, int odometerKm) {
        return record(user, "state", Map.of("odometerKm", odometerKm, "chargePercent", "84", "bay", "Bay 1"));
    }

    @Override
    public Answer pictured(String user) {
        Page page = hands.open(user, path());
        BrowserHands.unfold(page);
        Locator form = page.locator("form[action$='/record/pictures']");
        form.locator("#photograph").setInputFiles(new FilePayload("nearside.png", "image/png", Picture.PNG));
        form.locator("#picturePlace").fill("Nearside");
        form.locator("#remark").fill("Scratch");
        return hands.submitted(page, form);
    }

    @Override
    public Answer given(String user) {
        return record(user, "things", Map.of("count0", "2"));
    }

    @Override
    public Answer instructed(String user) {
        return record(
                user,
                "instructions",
                Map.of(
                        "drivers",
                        "Alex Sample",
                        "workshop",
                        "Kim Specimen",
                        "by",
                        "W-1007",
                        "on",
                        today().toString(),
                        "topic1",
                        "yes"));
    }

    @Override
    public Answer warranty(String user, int odometerKm) {
        return record(
                user,
                "warranty",
                Map.of(
                        "warrantyFrom",
                        today().toString(),
                        "warrantyKm",
                        odometerKm,
                        "covers",
                        "Conversion, 24 months"));
    }

    @Override
    public Answer snag(String user, String defect) {
        return record(
                user,
                "snags",
                Map.of(
                        "defect",
                        defect,
                        "snagPlace",
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
        return record(user, "snags/" + snag + "/closing", Map.of("done", "Touched up at the first service"));
    }

    @Override
    public Answer signed(String user, boolean drawn) {
        Page page = hands.open(user, path() + "/receipt");
        Locator form = page.locator("form[action$='/record/receipt']");
        if (form.count() == 0) {
            return hands.offers(page);
        }
        form.locator("#name").fill("Robin Invented");
        form.locator("#role").fill("Depot foreman");
        form.locator("#firm").fill("Vale and Fen");
        if (drawn) {
            draw(page);
        } else {
            form.locator("[name=manner][value=TYPED]").check();
            form.locator("#confirmed").check();
        }
        return hands.submitted(page, form, form.locator("button.largest"));
    }

    /** With the mouse, up and down across the field. */
    private static void draw(Page page) {
        Locator pad = page.locator("#pad");
        pad.scrollIntoViewIfNeeded();
        BoundingBox box = pad.boundingBox();
        page.mouse().move(box.x + box.width * 0.1, box.y + box.height * 0.5);
        page.mouse().down();
        for (int step = 1; step <= 16; step++) {
            double down = step % 2 == 0 ? 0.25 : 0.75;
            page.mouse().move(box.x + box.width * (0.1 + step * 0.05), box.y + box.height * down);
        }
        page.mouse().up();
    }

    @Override
    public Answer nobodySigns(String user, String witness, String password) {
        return hands.send(
                user,
                path() + "/receipt",
                "form[action$='/receipt/missing']",
                Map.of(
                        "absence",
                        "NOT_PRESENT",
                        "reason",
                        "Fetched before the depot opened",
                        "witness",
                        witness,
                        "password",
                        password));
    }

    private Answer record(String user, String act, Map<String, Object> fields) {
        return hands.send(user, path(), "form[action$='/record/" + act + "']", new LinkedHashMap<>(fields));
    }

    private String path() {
        return "/handover/" + vehicle.order() + "/record";
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
    }
}
