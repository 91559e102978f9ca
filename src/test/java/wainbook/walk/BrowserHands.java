package wainbook.walk;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import wainbook.page.Words;

/** By the pages, in a browser: fills in the forms that a page shows, and reads what it says where it shows none. */
final class BrowserHands implements Hands, AutoCloseable {

    /** What the page said after an act, or instead of a form. */
    private record Shown(boolean done, String text) implements Answer {

        /** By the sentence of the rule's text that says why, whatever stands in it. */
        @Override
        public boolean names(String key) {
            String[] sentences = Words.find(key).orElseThrow().split("(?<=[.:;]) (?=\\p{Lu}|\\{)");
            String why = sentences[sentences.length > 2 ? 1 : 0];
            String pattern = Pattern.compile("\\{\\d+[^}]*}")
                    .splitAsStream(why + " ")
                    .map(Pattern::quote)
                    .reduce((one, other) -> one + ".*?" + other)
                    .orElseThrow()
                    .replaceFirst(" \\\\E$", "\\\\E");
            return Pattern.compile(pattern, Pattern.DOTALL).matcher(text).find();
        }

        @Override
        public String toString() {
            return (done ? "done: " : "refused: ") + text;
        }
    }

    private final Vehicle vehicle;
    private final Browser browser;
    private final String base;
    private final Map<String, Page> signedIn = new HashMap<>();
    private final List<String> console = new ArrayList<>();
    private final Gaze gaze = new Gaze();
    private final WalkClock clock;

    BrowserHands(Vehicle vehicle, Browser browser, String base, WalkClock clock) {
        this.clock = clock;
        this.vehicle = vehicle;
        this.browser = browser;
        this.base = base;
    }

    /** What the browser complained about all the way. */
    List<String> console() {
        return console;
    }

    @Override
    public void close() {
        signedIn.values().forEach(page -> page.context().close());
    }

    /** Has a look at pages that no act of the walk opens. */
    void look(String user, List<String> paths) {
        paths.forEach(path -> open(user, path));
    }

    Page as(String user) {
        return signedIn.computeIfAbsent(user, name -> {
            BrowserContext context = browser.newContext(new Browser.NewContextOptions().setViewportSize(1024, 768));
            Page page = context.newPage();
            page.onConsoleMessage(message -> {
                if (message.type().equals("error") && !message.text().contains("status of 4")) {
                    console.add(message.text());
                }
            });
            page.onPageError(console::add);
            page.navigate(base + "/sign-in");
            page.fill("[name=j_username]", name);
            page.fill("[name=j_password]", ApiHands.PASSWORD);
            page.click("form[action='/j_security_check'] button");
            assertThat(page.url()).doesNotContain("sign-in");
            return page;
        });
    }

    @Override
    public Answer order(String user, Map<String, String> facts) {
        Map<String, Object> fields = new LinkedHashMap<>(Map.of(
                "number", vehicle.order(),
                "operator", "Vale and Fen Community Buses",
                "variant", "bus-12m",
                "route", "BUS-12M",
                "promisedOn", "2027-02-01"));
        Answer made = send(user, "/orders/new", "main form[method=post]", fields);
        facts.forEach(
                (fact, stated) -> assertThat(fact(user, fact, stated).done()).isTrue());
        return made;
    }

    @Override
    public Answer donor(String user, String vin, String registration, int odometerKm) {
        return send(
                user,
                order("/donor"),
                "main form[method=post]",
                Map.of("vin", vin, "registration", registration, "odometerKm", String.valueOf(odometerKm)));
    }

    @Override
    public Answer fact(String user, String fact, String stated) {
        return send(user, order("/facts?fact=" + fact), "main form[method=post]", Map.of("stated", stated));
    }

    @Override
    public Answer entry(String user, String item, Map<String, Object> reply) {
        Map<String, Object> fields = new LinkedHashMap<>();
        reply.forEach((name, value) -> {
            if (name.equals("readings")) {
                ((List<?>) value).forEach(one -> {
                    var reading = (Map<?, ?>) one;
                    fields.put(String.valueOf(reading.get("name")), reading.get("value"));
                });
            } else if (value instanceof List<?> several) {
                String field = Map.of("boltsNm", "bolt", "anglesDeg", "angle", "cells", "cell")
                        .get(name);
                for (int i = 0; i < several.size(); i++) {
                    fields.put(field + (i + 1), several.get(i));
                }
            } else {
                fields.put(name, value);
            }
        });
        return send(user, station(item), recordForm(item), fields);
    }

    @Override
    public Answer entry(String user, String item, String instrument, Map<String, Object> reply) {
        Map<String, Object> fields = new LinkedHashMap<>(reply);
        fields.put("instrument", instrument);
        return entry(user, item, fields);
    }

    @Override
    public Answer file(String user, String item) {
        Page page = open(user, station(item));
        page.locator("#file")
                .setInputFiles(
                        Picture.isPhotograph(item)
                                ? new FilePayload("label.png", "image/png", Picture.PNG)
                                : new FilePayload("report.pdf", "application/pdf", Picture.PDF));
        return submitted(page, page.locator("form[action$='/" + item + "/file']"));
    }

    @Override
    public Answer voidLast(String user, String item, String reason) {
        Page page = open(user, station(item));
        unfold(page);
        Locator form = page.locator("form[action$='/" + item + "/void']").last();
        form.locator("[name=reason]").fill(reason);
        return submitted(page, form);
    }

    @Override
    public Answer step(String user, String step, Map<String, Object> with) {
        Map<String, Object> fields = new LinkedHashMap<>();
        with.forEach((name, value) -> {
            if (name.equals("readings")) {
                ((List<?>) value).forEach(one -> {
                    var reading = (Map<?, ?>) one;
                    fields.put("volt-" + reading.get("pair"), reading.get("volt"));
                });
            } else if (name.equals("tester") && step.equals("issue-live-permit")) {
                fields.put("liveTester", value);
            } else {
                fields.put(name, value);
            }
        });
        if (ASK_PASSWORD.contains(step)) {
            fields.put("password", ApiHands.PASSWORD);
        }
        return send(user, "/isolation/" + vehicle.order(), "form[action$='/" + step + "']", fields);
    }

    private static final List<String> ASK_PASSWORD =
            List.of("issue-permit", "resume", "issue-sanction", "issue-live-permit", "restore");

    @Override
    public Answer sign(String user, String stage, String password) {
        return send(user, gate(stage), "form[action$='/sign-off']", Map.of("password", password));
    }

    @Override
    public Answer signAfter(String user, String stage, Runnable meanwhile) {
        Page page = open(user, gate(stage));
        meanwhile.run();
        Locator form = page.locator("form[action$='/sign-off']");
        form.locator("[name=password]").fill(ApiHands.PASSWORD);
        return submitted(page, form);
    }

    @Override
    public Answer refuse(String user, String stage, List<String> items, String reason) {
        return send(user, gate(stage), "form[action$='/refusal']", Map.of("items", items, "reason", reason));
    }

    @Override
    public Answer move(String user, String direction, String to) {
        Page page = open(user, order("/move"));
        Locator way = page.locator("input[name=way][value^='" + direction + " " + to + "']");
        if (way.count() == 0) {
            return new Shown(false, page.locator("main").innerText());
        }
        way.first().check();
        for (Locator box : page.locator("input[name=confirmed]").all()) {
            box.check();
        }
        page.locator("[name=reason]").fill("the walk goes on");
        return submitted(page, page.locator("main form[method=post]"));
    }

    @Override
    public Answer moveBack(String user, String stage, String to) {
        return move(user, "BACK", to + " " + stage);
    }

    @Override
    public Answer hold(String user, String kind, List<String> stops, String reason) {
        return send(
                user, order("/hold"), "main form[method=post]", Map.of("kind", kind, "stops", stops, "reason", reason));
    }

    @Override
    public Answer release(String user, int hold, String reason) {
        return send(user, order("/holds/" + hold + "/release"), "main form[method=post]", Map.of("reason", reason));
    }

    @Override
    public Answer dispose(String user, int nonconformity, String disposition, String because) {
        return send(
                user,
                order("/nonconformities/" + nonconformity + "/disposition"),
                "main form[method=post]",
                Map.of("disposition", disposition, "because", because));
    }

    @Override
    public Answer reSequence(String user, String item, String toStage, List<String> bars, String reason) {
        return send(
                user,
                "/station/" + vehicle.order() + "/" + item + "/later",
                "form[action$='/re-sequenced']",
                Map.of("toStage", toStage, "bars", bars, "reason", reason));
    }

    @Override
    public Answer document(String user, String requirement, String reference, String validUntil) {
        return send(
                user,
                "/handover/" + vehicle.order() + "/documents/" + requirement,
                "main form[method=post]",
                Map.of("state", "IN_HAND", "reference", reference, "validUntil", validUntil));
    }

    @Override
    public Answer passed(String user, String appointment) {
        return send(
                user,
                "/orders/" + vehicle.order() + "/appointments?open=" + appointment,
                "form[action$='/" + appointment + "/attended']",
                Map.of("remark", ""));
    }

    @Override
    public Answer issue(String user, String document, String password) {
        return send(
                user,
                "/handover/" + vehicle.order() + "/issue/" + document,
                "main form[method=post]",
                Map.of("password", password));
    }

    @Override
    public Answer roadRelease(String user, String driver, String password) {
        return send(
                user,
                "/orders/" + vehicle.order() + "/road",
                "form[action$='/road/release']",
                Map.of(
                        "driver",
                        driver,
                        "plates",
                        "Trade plates 114",
                        "insurance",
                        "Cover 20417",
                        "password",
                        password));
    }

    @Override
    public Answer roadDrive(String user, int fromKm, int toKm, String defects) {
        return send(
                user,
                "/orders/" + vehicle.order() + "/road",
                "form[action$='/road/drives']",
                Map.of(
                        "route",
                        "Bypass and back",
                        "loadKg",
                        "1000",
                        "fromKm",
                        String.valueOf(fromKm),
                        "toKm",
                        String.valueOf(toKm),
                        "packsDegC",
                        "27.5",
                        "defects",
                        defects,
                        "fit",
                        defects.isEmpty() ? "yes" : "no"));
    }

    @Override
    public Bay bay() {
        return new BrowserBay(this, vehicle, clock);
    }

    /** A page without the form that was looked for. */
    Answer offers(Page page) {
        return new Shown(false, page.locator("main").innerText());
    }

    @Override
    public Answer handOver(String user, String receivedBy) {
        return send(user, "/handover/" + vehicle.order(), "main form[method=post]", Map.of("receivedBy", receivedBy));
    }

    Answer send(String user, String path, String selector, Map<String, Object> fields) {
        Page page = open(user, path);
        unfold(page);
        Locator form = page.locator(selector).first();
        if (form.count() == 0) {
            return new Shown(false, page.locator("main").innerText());
        }
        Map<String, Object> later = new LinkedHashMap<>();
        fields.forEach((name, value) -> {
            if (form.locator("[name='" + name + "']").count() == 0) {
                later.put(name, value);
            } else {
                fill(form, name, value);
            }
        });
        Answer first = submitted(page, form);
        if (later.isEmpty()) {
            return first;
        }
        Locator again = page.locator(selector).first();
        later.forEach((name, value) -> fill(again, name, value));
        return submitted(page, again);
    }

    private static void fill(Locator form, String name, Object value) {
        Locator field = form.locator("[name='" + name + "']");
        String type = Optional.ofNullable(field.first().getAttribute("type")).orElse("");
        if (type.equals("hidden")) {
            return;
        }
        if (type.equals("checkbox") || type.equals("radio")) {
            List<?> wanted = value instanceof List<?> several ? several : List.of(value);
            wanted.forEach(one ->
                    form.locator("[name='" + name + "'][value='" + one + "']").check());
        } else if ("SELECT".equals(field.evaluate("field => field.tagName"))) {
            field.selectOption(String.valueOf(value));
        } else {
            field.fill(String.valueOf(value));
        }
    }

    /** A page that comes back with a refusal has a status of 409 or 422. */
    Answer submitted(Page page, Locator form) {
        return submitted(page, form, form.locator("button").first());
    }

    Answer submitted(Page page, Locator form, Locator button) {
        var answer = page.waitForResponse(
                response -> response.request().isNavigationRequest()
                        && response.request().redirectedTo() == null
                        && (response.status() < 300 || response.status() >= 400),
                button::click);
        page.waitForLoadState();
        gaze.at(page, vehicle.order());
        String text = page.locator("main").innerText();
        assertThat(answer.status()).as(text).isIn(200, 409, 422);
        boolean observed = page.locator(".caution [role=status], .verdict.danger[role=status]")
                        .count()
                > 0;
        return new Shown(answer.status() == 200 && !observed, text);
    }

    Page open(String user, String path) {
        Page page = as(user);
        assertThat(page.navigate(base + path).status()).as(path).isEqualTo(200);
        gaze.at(page, vehicle.order());
        return page;
    }

    static void unfold(Page page) {
        page.evaluate("document.querySelectorAll('details').forEach(one => one.open = true)");
    }

    private String order(String path) {
        return "/orders/" + vehicle.order() + path;
    }

    private String station(String item) {
        return "/station/" + vehicle.order() + "?item=" + item;
    }

    private String recordForm(String item) {
        return "form[action='/station/" + vehicle.order() + "/" + item + "']";
    }

    private String gate(String stage) {
        return "/gates/" + vehicle.order() + "/" + stage;
    }
}
