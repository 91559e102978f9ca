package wainbook.walk;

import io.quarkus.test.junit.QuarkusMock;
import jakarta.enterprise.inject.spi.CDI;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;

/** Where a walk begins: at 06:30 of the day after the demo works was opened, by a clock of its own. */
final class Stage {

    private Stage() {}

    static WalkClock morning(int day) {
        Entry opened = CDI.current()
                .select(Ledger.class)
                .get()
                .history(Subject.works())
                .entries()
                .get(0);
        ZoneId zone = ZoneId.of("Europe/London");
        LocalDate date = LocalDate.ofInstant(opened.moment().at(), zone).plusDays(day);
        var clock = new WalkClock(date.atTime(LocalTime.of(6, 30)).atZone(zone).toInstant());
        QuarkusMock.installMockForType(clock, Clock.class);
        return clock;
    }
}
