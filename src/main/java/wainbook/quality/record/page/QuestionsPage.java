package wainbook.quality.record.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.act.Moment;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.quality.QualitySaying.Answer;
import wainbook.quality.record.Agreeing;
import wainbook.quality.record.Questions;
import wainbook.quality.record.Replying;
import wainbook.quality.record.Replying.ToAnswer;
import wainbook.quality.record.Replying.ToSettle;
import wainbook.quality.record.Standing;
import wainbook.works.Role;

/** Questions about one's own entries; and for a quality engineer those that were answered, or left alone for two days. */
@Path("/quality/questions")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class QuestionsPage {

    private static final String HERE = "/quality/questions";

    private final Questions questions;
    private final Agreeing agreeing;
    private final Replying replying;
    private final SignedIn signedIn;

    QuestionsPage(Questions questions, Agreeing agreeing, Replying replying, SignedIn signedIn) {
        this.questions = questions;
        this.agreeing = agreeing;
        this.replying = replying;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance all() {
        return draw(Optional.empty(), Filled.fresh());
    }

    private TemplateInstance draw(Optional<UUID> about, Filled filled) {
        Moment now = signedIn.now();
        return QuestionPages.questions(new QuestionsView(
                ones(questions.to(now.who(), now.at())),
                quality() ? ones(questions.withQuality(now.who(), now.at())) : List.of(),
                quality(),
                agreeing.at(now.at()),
                about,
                filled));
    }

    private boolean quality() {
        return signedIn.is(Role.qualityEngineer);
    }

    private static List<QuestionsView.One> ones(List<Standing> standing) {
        return standing.stream().map(QuestionsView.One::new).toList();
    }

    /** One's own; a quality engineer gets those that came to them. Neither says who was asked. */
    @GET
    @Path("list.csv")
    @Produces("text/csv")
    public Response csv() {
        Moment now = signedIn.now();
        List<Standing> shown =
                quality() ? questions.withQuality(now.who(), now.at()) : questions.to(now.who(), now.at());
        return Csv.file(
                "questions",
                Arrays.asList(Words.of("quality.questionsHeader").split(";")),
                ones(shown).stream().map(QuestionsView.One::cells).toList());
    }

    @POST
    @Path("{question}/answer")
    public Response answer(
            String question, @RestForm String id, @RestForm Optional<String> answer, @RestForm String words) {
        UUID about = uuid(question);
        Filled filled = Filled.sent(id).with("words", words);
        Optional<Answer> given = Arrays.stream(Answer.values())
                .filter(one -> one.name().equals(answer.orElse("")))
                .findFirst();
        return given.map(one -> filled.answer(
                        replying.answer(ToAnswer.of(about, one, filled.value("words")), signedIn.actor()),
                        HERE,
                        again -> draw(Optional.of(about), again)))
                .orElseGet(() ->
                        filled.wrong("words", "quality.answerMissing").again(again -> draw(Optional.of(about), again)));
    }

    @POST
    @Path("{question}/settling")
    @RolesAllowed(Role.qualityEngineer)
    public Response settle(String question, @RestForm String id, @RestForm String words) {
        UUID about = uuid(question);
        Filled filled = Filled.sent(id).with("words", words);
        return filled.answer(
                replying.settle(ToSettle.of(about, filled.value("words")), signedIn.actor()),
                HERE,
                again -> draw(Optional.of(about), again));
    }

    private static UUID uuid(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException noId) {
            throw new NotFoundException();
        }
    }
}
