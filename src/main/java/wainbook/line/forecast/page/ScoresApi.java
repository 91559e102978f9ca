package wainbook.line.forecast.page;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.Instant;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.ledger.*;
import wainbook.line.forecast.*;
import wainbook.line.forecast.score.*;
import wainbook.page.SignedIn;
import wainbook.works.shift.WorksDay;

@Path("/api/v1/forecast/scores")
public class ScoresApi {
    private final BackTests tests;
    private final SignedIn signedIn;
    private final Ledger ledger;
    private final WorksDay day;

    ScoresApi(BackTests tests, SignedIn signedIn, Ledger ledger, WorksDay day) {
        this.tests = tests;
        this.signedIn = signedIn;
        this.ledger = ledger;
        this.day = day;
    }

    @GET
    @Authenticated
    public String scores() {
        Instant now = signedIn.now().at();
        var said = tests.said(now, 60);
        var finished = new java.util.HashMap<String, Instant>();
        ledger.drawing(() -> {
            ledger.subjects(Subject.Sort.WORK_ORDER).stream()
                    .map(ledger::history)
                    .forEach(h -> wainbook.line.forecast.Finishes.of(h)
                            .ifPresent(at -> finished.put(h.subject().code(), at)));
            return 0;
        });
        var cards = Cards.of(said, finished, day.shifts(), d -> d.getDayOfWeek().getValue() < 6, now);
        var out = new StringBuilder();
        for (Card c : cards.cards()) {
            out.append(c).append("\n");
        }
        for (var p : said) {
            var f = finished.get(p.order());
            out.append(p.order())
                    .append(' ')
                    .append(p.at())
                    .append(' ')
                    .append(p.quantile(0.025))
                    .append(' ')
                    .append(p.quantile(0.1))
                    .append(' ')
                    .append(p.quantile(0.5))
                    .append(' ')
                    .append(p.quantile(0.9))
                    .append(' ')
                    .append(p.quantile(0.975))
                    .append(" came ")
                    .append(f)
                    .append(" stages ")
                    .append(p.byStages())
                    .append(" takt ")
                    .append(p.byTakt())
                    .append('\n');
        }
        return out.toString();
    }

    @GET
    @Path("moves")
    @Authenticated
    public String moves() {
        var out = new StringBuilder();
        ledger.drawing(() -> {
            ledger.subjects(Subject.Sort.WORK_ORDER).stream()
                    .map(ledger::history)
                    .forEach(h -> {
                        for (Entry e : h.entries()) {
                            if (e.saying() instanceof wainbook.order.OrderSaying.Moved m)
                                out.append(h.subject().code())
                                        .append(' ')
                                        .append(e.moment().at())
                                        .append(' ')
                                        .append(m.direction())
                                        .append(' ')
                                        .append(m.to())
                                        .append('\n');
                            if (e.saying() instanceof SignedOff s)
                                out.append(h.subject().code())
                                        .append(' ')
                                        .append(e.moment().at())
                                        .append(" signed ")
                                        .append(s.stage())
                                        .append('\n');
                        }
                    });
            return 0;
        });
        return out.toString();
    }
}
