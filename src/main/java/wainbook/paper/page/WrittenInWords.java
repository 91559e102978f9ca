package wainbook.paper.page;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wainbook.isolation.paper.IsolationForm;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.paper.Written;
import wainbook.paper.page.CompareView.Fact;
import wainbook.permit.PermitForm;
import wainbook.station.StationSaying.Figure;
import wainbook.station.paper.PaperLine;
import wainbook.works.PersonInWords;

/**
 * What stands on a filled-in form, line by line, for whoever compares it with the photograph.
 *
 * @param titles what the form says of each check item, by its key
 */
record WrittenInWords(Formats formats, Map<String, String> titles) {

    List<Fact> of(Written written) {
        if (written instanceof Written.Items items) {
            return items.lines().stream().map(this::line).toList();
        }
        return written instanceof Written.Isolation isolation
                ? isolation(isolation.form())
                : permit(((Written.Permit) written).form());
    }

    private Fact line(PaperLine line) {
        String values = line.typed().stream().map(Figure::value).collect(Collectors.joining(" / "));
        String with = line.instrument()
                .map(code -> (values.isEmpty() ? "" : values + ", ") + Words.of("paper.withInstrument", code))
                .orElse(values.isEmpty() ? Words.of("paper.done") : values);
        return fact(titles.getOrDefault(line.item(), line.item()), with, line.doer(), line.doneAt());
    }

    private List<Fact> isolation(IsolationForm form) {
        var facts = new ArrayList<Fact>();
        facts.add(fact(part("begin"), ticks(form), form.isolator(), form.begunAt()));
        form.shutDown()
                .ifPresent(said -> facts.add(fact(
                        Words.of("paper.column.down"),
                        said.box() + ": " + String.join(", ", said.keys()),
                        form.isolator(),
                        said.at())));
        form.opened().forEach(source -> facts.add(fact(part("source"), source.source(), form.isolator(), source.at())));
        form.locks()
                .forEach(lock -> facts.add(fact(
                        part("lock"),
                        lock.lock() + ", " + lock.tag() + " "
                                + lock.offAt()
                                        .map(off -> Words.of("paper.offAt", formats.moment(off)))
                                        .orElse(Words.of("paper.stillOn")),
                        lock.who(),
                        lock.onAt())));
        form.provedBefore().ifPresent(proved -> facts.add(proving("before", proved)));
        form.touches()
                .forEach(touch -> facts.add(fact(
                        part(touch.again() ? "again" : "first") + " " + touch.point(),
                        touch.readings().stream()
                                .map(read ->
                                        Words.of("isolating.pair." + read.pair().name()) + " "
                                                + read.volt().toPlainString() + " V")
                                .collect(Collectors.joining("; ")),
                        "",
                        touch.at())));
        form.provedAfter().ifPresent(proved -> facts.add(proving("after", proved)));
        form.witness().ifPresent(sign -> facts.add(fact(part("witness"), "", sign.who(), sign.at())));
        form.permit()
                .ifPresent(paper -> facts.add(fact(
                        part("permit"),
                        Words.of(
                                "paper.permitLine",
                                paper.work(),
                                person(paper.receiver()),
                                String.join(", ", paper.pointsOfWork()),
                                formats.moment(paper.validUntil())),
                        paper.issuer(),
                        paper.at())));
        form.readers().forEach(sign -> facts.add(fact(part("reader"), "", sign.who(), sign.at())));
        form.handedBack()
                .ifPresent(back -> facts.add(fact(
                        part("back"),
                        Words.of(back.opened() ? "paper.opened" : "paper.notOpened"),
                        back.who(),
                        back.at())));
        form.cancelled().ifPresent(sign -> facts.add(fact(part("cancelled"), "", sign.who(), sign.at())));
        form.checks().forEach(check -> facts.add(fact(part("check"), check.check(), check.who(), check.at())));
        form.restored().ifPresent(last -> facts.add(fact(part("restored"), last.lock(), last.who(), last.at())));
        return facts;
    }

    private Fact proving(String row, IsolationForm.Proved proved) {
        return fact(
                Words.of("paper.row." + row),
                Words.of(
                        "paper.provedLine",
                        proved.tester(),
                        proved.source(),
                        proved.sourceVolt().toPlainString(),
                        proved.readingVolt().toPlainString()),
                proved.who(),
                proved.at());
    }

    private static String ticks(IsolationForm form) {
        return form.confirmed().stream()
                .map(one -> Words.of("isolation.precaution." + one.name()))
                .collect(Collectors.joining("; "));
    }

    private List<Fact> permit(PermitForm form) {
        var facts = new ArrayList<Fact>();
        String sort = Words.of("permit.sort." + form.sort().name());
        facts.add(fact(Words.of("paper.row.issued"), sort + ": " + form.work(), form.issuer(), form.issuedAt()));
        form.precautions()
                .forEach(tick -> facts.add(new Fact(
                        Words.of("permit.precaution." + tick.precaution().name()),
                        tick.naming().orElse(Words.of("paper.ticked")),
                        "",
                        "")));
        form.circumstances()
                .forEach(trait -> facts.add(
                        new Fact(Words.of("permit.trait." + trait.name()), Words.of("paper.ticked"), "", "")));
        facts.add(new Fact(
                Words.of("paper.row.received"),
                "",
                person(form.receiver()),
                form.receivedAt().map(formats::moment).orElse("–")));
        facts.add(new Fact(Words.of("paper.row.until"), formats.moment(form.validUntil()), "", ""));
        form.handedBackAt()
                .ifPresent(at -> facts.add(new Fact(Words.of("paper.row.handedBack"), "", "", formats.moment(at))));
        form.closedAt().ifPresent(at -> facts.add(new Fact(Words.of("paper.row.closed"), "", "", formats.moment(at))));
        return facts;
    }

    /** The number as on the paper, and whose it is: a wrong digit names somebody else. */
    private static String person(String number) {
        return Words.of("paper.numberAndName", number, PersonInWords.name(number));
    }

    private static String part(String key) {
        return Words.of("paper.part." + key);
    }

    private Fact fact(String what, String value, String who, Instant at) {
        return new Fact(what, value, who.isEmpty() ? "" : person(who), formats.moment(at));
    }
}
