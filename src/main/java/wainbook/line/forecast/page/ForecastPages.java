package wainbook.line.forecast.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages of this part. */
@CheckedTemplate(basePath = "line", defaultName = CheckedTemplate.ELEMENT_NAME)
final class ForecastPages {

    private ForecastPages() {}

    static native TemplateInstance forecast(ForecastView view);

    static native TemplateInstance whatif(WhatIfView view);

    static native TemplateInstance scores(ScoresView view);
}
