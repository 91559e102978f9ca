package wainbook.setup.taking;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import wainbook.setup.files.Lines;
import wainbook.setup.files.WorksFiles;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRule;

/** The instruments as they will be once the files are taken: what the files say, and what they leave out as it stands. */
record ToolsThen(OnRecord record, WorksFiles wanted) {

    /** Those of a kind that may be used on the day of the take. */
    List<Instrument> fit(String kind) {
        LocalDate first = record.firstDay(wanted.works().zone());
        LocalDate today =
                LocalDate.ofInstant(record.today(), ZoneId.of(wanted.works().zone()));
        return ToSay.merged(wanted.instruments(), record.standing().instruments(), Lines.Instrument::code).stream()
                .filter(line -> line.kind().equals(kind))
                .map(line -> instrument(line, first))
                .filter(tool -> InstrumentRule.against(Optional.of(tool), kind, List.of(), today)
                        .isEmpty())
                .toList();
    }

    private static Instrument instrument(Lines.Instrument line, LocalDate first) {
        return new Instrument(
                line.code(),
                line.kind(),
                line.title(),
                line.unit(),
                line.lower(),
                line.upper(),
                line.accuracyPercent(),
                line.dueDay().map(first::plusDays),
                line.withdrawn(),
                Optional.empty());
    }
}
