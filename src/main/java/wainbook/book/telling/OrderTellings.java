package wainbook.book.telling;

import java.util.stream.Collectors;
import wainbook.order.FactQuestion;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.DonorAccepted;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.DonorRejected;
import wainbook.order.OrderSaying.FactStated;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Rebound;
import wainbook.order.OrderSaying.Returned;
import wainbook.order.OrderSaying.ReturnedUnder;
import wainbook.order.calibration.CalibrationSaying.CalibrationAsked;
import wainbook.order.hold.HoldChoices;
import wainbook.order.promise.PromiseSaying.OptionPromised;
import wainbook.order.promise.PromiseSaying.PromiseWithdrawn;
import wainbook.order.specification.SpecificationSaying.ChassisStated;
import wainbook.order.specification.SpecificationSaying.DutyStated;
import wainbook.order.specification.SpecificationSaying.Specified;
import wainbook.page.Formats;
import wainbook.page.Words;

/** How what is said of an order and its vehicle is told. */
final class OrderTellings {

    private OrderTellings() {}

    static void addTo(Tellings tellings) {
        tellings.on(
                Ordered.class,
                (said, names) -> Told.of(Words.of(
                        "book.ordered",
                        said.operator(),
                        said.vehicleKind(),
                        said.route(),
                        Formats.date(said.promisedOn()))));
        tellings.on(
                FactStated.class,
                (said, names) -> Told.of(
                        Words.of("book.factStated", FactQuestion.name(said.fact())), FactQuestion.word(said.stated())));
        tellings.on(
                DutyStated.class,
                (said, names) -> Told.of(
                        Words.of("book.dutyStated", said.duty().legs().size()),
                        said.duty().words()));
        tellings.on(
                OptionPromised.class,
                (said, names) -> Told.of(Words.of("book.optionPromised", said.promise(), said.option())));
        tellings.on(
                PromiseWithdrawn.class,
                (said, names) -> Told.of(Words.of("book.promiseWithdrawn", said.promise(), said.reason())));
        tellings.on(
                CalibrationAsked.class,
                (said, names) -> Told.of(Words.of(
                        "book.calibrationAsked",
                        said.wishes().size(),
                        said.wishes().stream()
                                .map(wish -> Words.of("order.setting."
                                                + wish.setting().name()) + " "
                                        + wish.value().toPlainString() + " "
                                        + wish.setting().unit())
                                .collect(Collectors.joining("; ")))));
        tellings.on(ChassisStated.class, (said, names) -> Told.of(Words.of("book.chassisStated")));
        tellings.on(
                Specified.class,
                (said, names) -> Told.of(Words.of(
                        "order.specified", said.chosen().packs(), said.chosen().packType())));
        tellings.on(
                Returned.class,
                (said, names) -> Told.of(
                        Words.of("book.returned", said.earlier(), said.registration(), said.vin(), said.reason()),
                        Words.of("book.carriesOn", said.carriesOn(), said.head())));
        tellings.on(ReturnedUnder.class, (said, names) -> Told.of(Words.of("book.returnedUnder", said.order())));
        tellings.on(
                DonorReceived.class,
                (said, names) -> Told.of(
                        Words.of(
                                "book.donorReceived",
                                said.registration(),
                                said.vin(),
                                names.place(said.at().place())),
                        Words.of("book.km", said.odometerKm())));
        tellings.on(
                DonorAccepted.class,
                (said, names) -> Told.of(
                        Words.of("book.donorAccepted", names.place(said.to().place()))));
        tellings.on(DonorRejected.class, (said, names) -> Told.of(Words.of("book.donorRejected", said.reason())));
        tellings.on(Moved.class, OrderTellings::moved);
        tellings.on(
                Rebound.class,
                (said, names) -> Told.of(Words.of(
                        "book.rebound", names.stage(said.to().stage()), sheet(said.from()), sheet(said.to()))));
        tellings.on(
                Held.class,
                (said, names) -> Told.of(Words.of(
                        "book.held",
                        said.hold(),
                        HoldChoices.word(said.kindOfHold()),
                        HoldChoices.words(said.stops()),
                        said.reason())));
        tellings.on(
                HoldReleased.class,
                (said, names) -> Told.of(Words.of("book.holdReleased", said.hold(), said.reason())));
        tellings.on(
                HandedOver.class,
                (said, names) -> Told.of(Words.of(
                        "book.handedOver",
                        said.receivedBy(),
                        said.requirements().size())));
    }

    private static Told moved(Moved said, Names names) {
        String confirmed = said.confirmed().stream()
                .map(key -> Words.find("line." + key).orElse(key))
                .collect(Collectors.joining("; "));
        String moved = Words.of(
                "book.moved." + said.direction().name(),
                names.place(said.from().place()),
                names.place(said.to().place()));
        String why = said.reason()
                .map(reason -> " " + Words.of("book.because", reason))
                .orElse("");
        return Told.of(moved + why + (confirmed.isEmpty() ? "" : " " + Words.of("book.confirmedBefore", confirmed)));
    }

    private static String sheet(Binding binding) {
        return Words.of("book.sheet", binding.sheet(), binding.revision());
    }
}
