package wainbook.setup;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.util.List;
import wainbook.book.BookSaying;
import wainbook.gate.GateSaying;
import wainbook.handover.HandoverSaying;
import wainbook.handover.carbon.CarbonSaying;
import wainbook.handover.record.RecordSaying;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.paper.OnPaperSaying;
import wainbook.ledger.Kinds;
import wainbook.line.LineSaying;
import wainbook.line.milestone.webhook.WebhookSaying;
import wainbook.matter.MatterSaying;
import wainbook.order.OrderSaying;
import wainbook.order.calibration.CalibrationSaying;
import wainbook.order.promise.PromiseSaying;
import wainbook.order.specification.SpecificationSaying;
import wainbook.pack.PackSaying;
import wainbook.paper.PaperSaying;
import wainbook.permit.PermitSaying;
import wainbook.process.ProcessSaying;
import wainbook.quality.QualitySaying;
import wainbook.safety.SafetySaying;
import wainbook.station.StationSaying;
import wainbook.station.serial.BroughtSaying;
import wainbook.trace.campaign.CampaignSaying;
import wainbook.waste.WasteSaying;
import wainbook.works.WorksSaying;

/** Every kind of entry that this program writes and reads. */
class Vocabulary {

    @Produces
    @Singleton
    Kinds kinds() {
        return Kinds.of(List.of(
                WorksSaying.class,
                OrderSaying.class,
                SpecificationSaying.class,
                PromiseSaying.class,
                CalibrationSaying.class,
                MatterSaying.class,
                ProcessSaying.class,
                StationSaying.class,
                BroughtSaying.class,
                LineSaying.class,
                WebhookSaying.class,
                GateSaying.class,
                PackSaying.class,
                WasteSaying.class,
                PermitSaying.class,
                SafetySaying.class,
                QualitySaying.class,
                HandoverSaying.class,
                RecordSaying.class,
                CarbonSaying.class,
                BookSaying.class,
                IsolationSaying.class,
                OnPaperSaying.class,
                PaperSaying.class,
                CampaignSaying.class,
                SetupSaying.class));
    }
}
