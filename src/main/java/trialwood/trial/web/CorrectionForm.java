package trialwood.trial.web;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.web.Form;

/**
 * A value that is put right.
 *
 * @param value as on the sheet: a value of the trait, or why there is none
 * @param reason why the earlier one was wrong
 */
record CorrectionForm(
    @Nullable UUID formKey, @Nullable String value, @Nullable String reason, @Nullable String by)
    implements Form {}
