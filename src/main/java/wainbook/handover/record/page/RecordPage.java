package wainbook.handover.record.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.handover.record.RecordSaying.Sort;
import wainbook.handover.record.RecordSaying.Thing;
import wainbook.handover.record.Wordlists;
import wainbook.handover.record.act.Condition;
import wainbook.handover.record.act.Instructing;
import wainbook.handover.record.act.Snagging;
import wainbook.handover.record.act.WarrantyStart;
import wainbook.handover.record.act.Withdrawing;
import wainbook.ledger.Asked;
import wainbook.ledger.Entry;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.works.Role;

/** The handover record of one vehicle: what is read, agreed, given, instructed and warranted. */
@Path("/handover/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/record")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({Role.technician, Role.teamLeader, Role.handoverClerk, Role.lineManager, Role.qualityEngineer})
public class RecordPage {

    private static final int FREE_LINES = 3;

    private final RecordDrawing drawing;
    private final Condition condition;
    private final Snagging snagging;
    private final Instructing instructing;
    private final WarrantyStart warranty;
    private final Withdrawing withdrawing;
    private final SignedIn signedIn;

    RecordPage(
            RecordDrawing drawing,
            Condition condition,
            Snagging snagging,
            Instructing instructing,
            WarrantyStart warranty,
            Withdrawing withdrawing,
            SignedIn signedIn) {
        this.drawing = drawing;
        this.condition = condition;
        this.snagging = snagging;
        this.instructing = instructing;
        this.warranty = warranty;
        this.withdrawing = withdrawing;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public TemplateInstance record(String order) {
        return drawing.again(order).apply(Filled.fresh());
    }

    @POST
    @Path("state")
    public Response read(String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Condition.ToRead(
                form.filled().id(), order, form.whole("odometerKm"), form.whole("chargePercent"), form.text("bay"));
        return answer(form, order, "state", asked, condition::read);
    }

    @POST
    @Path("things")
    public Response list(String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Condition.ToList(
                form.filled().id(),
                order,
                things(form, sent),
                form.text("nothing").equals("yes"));
        return answer(form, order, "things", asked, condition::list);
    }

    private static List<Thing> things(SentForm form, MultivaluedMap<String, String> sent) {
        var things = new ArrayList<Thing>();
        for (int i = 0; sent.containsKey("thing" + i); i++) {
            add(things, form, form.text("thing" + i), "count" + i);
        }
        for (int i = 0; i < FREE_LINES; i++) {
            add(things, form, form.text("free" + i), "freeCount" + i);
        }
        return things;
    }

    private static void add(List<Thing> things, SentForm form, String thing, String count) {
        if (!form.text(count).isEmpty() && !form.text(count).equals("0")) {
            things.add(new Thing(thing, form.whole(count)));
        }
    }

    @POST
    @Path("snags")
    public Response agree(String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Snagging.ToAgree(
                form.filled().id(),
                order,
                form.text("defect"),
                form.text("snagPlace"),
                form.text("withName"),
                form.maybe("owner"),
                form.text("remedy"),
                form.day("dueOn"));
        return answer(form, order, "snags", asked, snagging::agree);
    }

    @POST
    @Path("instructions")
    public Response instruct(String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        List<String> topics = new ArrayList<>(IntStream.range(0, Wordlists.MOST)
                .filter(i -> form.text("topic" + i).equals("yes"))
                .mapToObj(i -> form.text("topicName" + i))
                .toList());
        topics.addAll(Wordlists.lines(form.text("moreTopics")));
        var asked = new Instructing.ToInstruct(
                form.filled().id(),
                order,
                Wordlists.lines(form.text("drivers")),
                Wordlists.lines(form.text("workshop")),
                form.text("by"),
                topics,
                form.day("on"));
        return answer(form, order, "instruction", asked, instructing::instruct);
    }

    @POST
    @Path("instructions/none")
    public Response omit(String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Instructing.ToOmit(form.filled().id(), order, form.text("whyNot"));
        return answer(form, order, "instruction", asked, instructing::omit);
    }

    @POST
    @Path("warranty")
    public Response begin(String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new WarrantyStart.ToBegin(
                form.filled().id(), order, form.day("warrantyFrom"), form.whole("warrantyKm"), form.text("covers"));
        return answer(form, order, "warranty", asked, warranty::begin);
    }

    @POST
    @Path("withdrawals")
    public Response withdraw(String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Withdrawing.ToWithdraw(
                form.filled().id(),
                order,
                form.one("sort", Sort.values()),
                form.whole("piece"),
                form.text("withdrawReason"));
        return answer(form, order, "", asked, withdrawing::withdraw);
    }

    private <A extends Asked> Response answer(
            SentForm form, String order, String anchor, A asked, BiFunction<A, Actor, Outcome<Entry>> act) {
        return form.right()
                ? form.filled()
                        .answer(
                                act.apply(asked, signedIn.actor()),
                                RecordDrawing.path(order, anchor),
                                drawing.again(order))
                : form.filled().again(drawing.again(order));
    }
}
