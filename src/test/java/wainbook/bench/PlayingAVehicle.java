package wainbook.bench;

import wainbook.rehearsal.PlayedVehicles;

/** What a whole vehicle costs, from the order to the handover: everything the program does, in one figure. */
final class PlayingAVehicle {

    private PlayingAVehicle() {}

    static Comparison comparison(PlayedVehicles vehicles, PlainRows rows, OwnRecord one) {
        return new Comparison(
                "play a whole vehicle",
                one.entries().size(),
                () -> vehicles::handedOver,
                "as many INSERTs in one transaction",
                () -> () -> rows.insert(one.texts()));
    }
}
