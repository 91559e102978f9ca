package wainbook.paper.page.sent;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.isolation.IsolationSaying.Reading;
import wainbook.isolation.paper.IsolationForm;
import wainbook.isolation.paper.IsolationForm.Checked;
import wainbook.isolation.paper.IsolationForm.Locked;
import wainbook.isolation.paper.IsolationForm.Opened;
import wainbook.isolation.paper.IsolationForm.Permitted;
import wainbook.isolation.paper.IsolationForm.Proved;
import wainbook.isolation.paper.IsolationForm.Restored;
import wainbook.isolation.paper.IsolationForm.Returned;
import wainbook.isolation.paper.IsolationForm.ShutDown;
import wainbook.isolation.paper.IsolationForm.Signed;
import wainbook.isolation.paper.IsolationForm.Touched;
import wainbook.isolation.permit.Precaution;
import wainbook.page.Filled;
import wainbook.paper.page.sheet.IsolationSections;
import wainbook.paper.page.sheet.Section;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Point.Pair;

/** An isolation form as it was typed over. A line begins with its time: without one it was left out on the paper. */
public final class SentIsolation {

    private final ByHand hand;
    private final IsolationSections sections;

    private SentIsolation(ByHand hand, IsolationSections sections) {
        this.hand = hand;
        this.sections = sections;
    }

    public static IsolationForm read(ByHand hand, IsolationSections sections) {
        return new SentIsolation(hand, sections).form();
    }

    private IsolationForm form() {
        String isolator = hand.must("begin.1.who");
        Instant begunAt = hand.mustTime("begin.1.time");
        hand.begins(begunAt);
        Filled ticked = hand.filled();
        List<Precaution> confirmed = IsolationSections.PRECAUTIONS.stream()
                .filter(one -> ticked.value(one.name()).equals("yes"))
                .toList();
        List<Touched> touches = new ArrayList<>(touches("first", false));
        touches.addAll(touches("again", true));
        return new IsolationForm(
                isolator,
                begunAt,
                confirmed,
                hand.time("begin.1.down").map(at -> new ShutDown(at, hand.must("begin.1.box"), list("begin.1.keys"))),
                opened(),
                locks(),
                proved("tester.before"),
                touches,
                proved("tester.after"),
                signed("witness.1"),
                permit(),
                signs("reader", IsolationSections.READERS),
                hand.time("back.1.time")
                        .map(at -> new Returned(
                                hand.must("back.1.who"),
                                at,
                                hand.text("back.1.opened")
                                        .filter(text -> !text.toLowerCase(java.util.Locale.ROOT)
                                                .startsWith("n"))
                                        .isPresent())),
                signed("cancelled.1"),
                checks(),
                hand.time("restored.1.time")
                        .map(at -> new Restored(hand.must("restored.1.who"), at, hand.must("restored.1.lock"))));
    }

    private List<String> list(String field) {
        return Arrays.stream(hand.must(field).split("[,;\\s]+"))
                .filter(text -> !text.isEmpty())
                .toList();
    }

    private List<Opened> opened() {
        return sections.plan().stream()
                .flatMap((Plan plan) -> plan.sourcesWith(sections.landed()).stream())
                .flatMap(source -> hand.time(Section.field("source", source.code(), "time")).stream()
                        .map(at -> new Opened(source.code(), at)))
                .toList();
    }

    private List<Locked> locks() {
        var locks = new ArrayList<Locked>();
        for (int i = 1; i <= IsolationSections.LOCKS; i++) {
            String row = "lock." + i;
            hand.time(row + ".on")
                    .ifPresent(on -> locks.add(new Locked(
                            hand.must(row + ".who"),
                            hand.must(row + ".lock"),
                            hand.must(row + ".tag"),
                            on,
                            hand.time(row + ".off"))));
        }
        return locks;
    }

    private Optional<Proved> proved(String row) {
        return hand.time(row + ".time")
                .map(at -> new Proved(
                        hand.must(row + ".who"),
                        at,
                        hand.must(row + ".tester"),
                        hand.must(row + ".known"),
                        hand.mustNumber(row + ".sourceVolt"),
                        hand.mustNumber(row + ".readingVolt")));
    }

    private List<Touched> touches(String section, boolean again) {
        return sections.points().stream()
                .flatMap(point -> hand.time(Section.field(section, point.code(), "time")).stream()
                        .map(at ->
                                new Touched(point.code(), again, at, readings(section, point.code(), point.pairs()))))
                .toList();
    }

    private List<Reading> readings(String section, String point, List<Pair> pairs) {
        return pairs.stream()
                .flatMap(pair -> hand.number(Section.field(section, point, pair.name())).stream()
                        .map(volt -> new Reading(pair, volt)))
                .toList();
    }

    private Optional<Signed> signed(String row) {
        return hand.time(row + ".time").map(at -> new Signed(hand.must(row + ".who"), at));
    }

    private List<Signed> signs(String section, int rows) {
        var signs = new ArrayList<Signed>();
        for (int i = 1; i <= rows; i++) {
            signed(section + "." + i).ifPresent(signs::add);
        }
        return signs;
    }

    private Optional<Permitted> permit() {
        return hand.time("permit.1.time")
                .map(at -> new Permitted(
                        hand.must("permit.1.who"),
                        at,
                        hand.must("permit.1.receiver"),
                        hand.must("permit.1.work"),
                        list("permit.1.points"),
                        hand.mustTime("permit.1.until")));
    }

    private List<Checked> checks() {
        return sections.plan().map(Plan::restoration).orElse(List.of()).stream()
                .flatMap(check -> signed("check." + check.code()).stream()
                        .map(sign -> new Checked(check.code(), sign.who(), sign.at())))
                .toList();
    }
}
