package wainbook.station.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;
import java.util.Optional;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.station.rebinding.NewerSheet;
import wainbook.station.serial.StandingSerials.Serial;

/** The pages of this room. */
@CheckedTemplate(basePath = "station", defaultName = CheckedTemplate.ELEMENT_NAME)
final class StationPages {

    private StationPages() {}

    static native TemplateInstance station(StationView view);

    static native TemplateInstance rebinding(Filled filled, String order, Long seen, Optional<NewerSheet> newer);

    static native TemplateInstance later(DeferralView view);

    /** Calls help to a vehicle that stands at no station too. */
    static native TemplateInstance call(Filled filled, String order, List<Option> helps, List<HelpView.Line> calls);

    static native TemplateInstance takenOff(Filled filled, String order, Serial part);

    static native TemplateInstance help(Filled filled, HelpView view);
}
