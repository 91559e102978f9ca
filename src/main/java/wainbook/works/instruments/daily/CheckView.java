package wainbook.works.instruments.daily;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.works.WorksSaying.ToolChecked;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRow;

/** A tool's checks before work, the newest first, and the form for the next. */
public record CheckView(
        Instrument instrument, List<Line> lines, List<InstrumentRow> testers, LocalDate today, Filled filled) {

    /** One check, with who made it. */
    public record Line(ToolChecked said, Entry entry) {

        public boolean failed() {
            return DailyCheck.failed(said);
        }

        public String standing() {
            return Words.of(said.passed() ? "works.checkGood" : failed() ? "works.checkFailed" : "works.checkLook");
        }

        public String references() {
            return said.references().stream().map(BigDecimal::toPlainString).collect(Collectors.joining(" · "));
        }

        public String error() {
            return Formats.signed(said.errorPercent());
        }
    }

    static List<Line> lines(History history) {
        var lines = new ArrayList<Line>();
        history.saying(ToolChecked.class).forEach(entry -> lines.add(0, new Line((ToolChecked) entry.saying(), entry)));
        return lines;
    }

    public boolean usable() {
        return instrument.withdrawnBecause().isEmpty();
    }

    public String state() {
        if (!usable()) {
            return Words.of("works.instrumentStanding.WITHDRAWN");
        }
        return lines.isEmpty() ? Words.of("works.neverChecked") : lines.get(0).standing();
    }

    /** Testers that may be used today. */
    public List<Option> testerOptions() {
        return testers.stream()
                .filter(row -> !row.withdrawn && row.due != null && !today.isAfter(row.due))
                .map(row -> new Option(row.code, row.inWords()))
                .toList();
    }

    public String path() {
        return "/instruments/" + instrument.code();
    }
}
