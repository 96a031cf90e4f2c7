// Made from openapi.json by `npm run -w @ballfirst/api openapi`. Do not edit.
export interface paths {
    "/api/sign-in": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Sign in with an email address and a password; sets the session cookie.
         * @description For: anyone.
         */
        post: operations["signIn"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/sign-out": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Sign out here, or everywhere.
         * @description For: signed-in.
         */
        post: operations["signOut"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/me": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Who is signed in, in which academy and role.
         * @description For: signed-in.
         */
        get: operations["readMe"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/me/academy": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Choose one of several academies for this session.
         * @description For: signed-in.
         */
        put: operations["chooseAcademy"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/academies/{academy}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What a visitor may know of an academy before joining.
         * @description For: anyone.
         */
        get: operations["readAcademy"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/join/{academy}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Join an academy as a student on trial; signs in.
         * @description For: anyone.
         */
        post: operations["joinAcademy"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/password/forgotten": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Ask for a letter with a link to a new password. The answer is the same whether the address is known.
         * @description For: anyone.
         */
        post: operations["askReset"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/password/reset": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Choose a new password with the link of a letter: every session ends, and a new one begins here.
         * @description For: anyone.
         */
        post: operations["resetPassword"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/invitations/read": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * What the link of an invitation offers. A POST, so that the link stands in no address and no log.
         * @description For: anyone.
         */
        post: operations["readInvitation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/invitations/accept": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Join the staff of an academy with the link of an invitation; signs in.
         * @description For: anyone.
         */
        post: operations["acceptInvitation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/me/guardian": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Where the consent of a junior's guardian stands.
         * @description For: student.
         */
        get: operations["readGuardian"];
        put?: never;
        /**
         * Ask a guardian for consent: a letter with a link goes to the guardian; an earlier link stops working.
         * @description For: student.
         */
        post: operations["askGuardian"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/consent/read": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * What the link of a letter asks a guardian. A POST, so that the link stands in no address and no log.
         * @description For: anyone.
         */
        post: operations["readConsent"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/consent/give": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Consent as a junior's guardian to the version that was read; purposes beyond coaching one by one.
         * @description For: anyone.
         */
        post: operations["giveConsent"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/consent/withdraw": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Withdraw a consent: nothing more can be sent, and swings that were not answered yet leave the inbox.
         * @description For: anyone.
         */
        post: operations["withdrawConsent"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/students/{id}/consent-withdrawn": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Record that a guardian has withdrawn consent by writing to the academy.
         * @description For: manager.
         */
        post: operations["recordWithdrawal"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/me/practice-means": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What the student told about time, place, goal and body.
         * @description For: student.
         */
        get: operations["readMeans"];
        /**
         * Say with how much time and where one practises; a note about the body needs its own permission.
         * @description For: student.
         */
        put: operations["saveMeans"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * A student's own submissions, or one student's for a coach; newest first.
         * @description For: student, coach, manager.
         */
        get: operations["listSubmissions"];
        put?: never;
        /**
         * Send a swing: clips already uploaded (or still uploading) with how it went.
         * @description For: student.
         */
        post: operations["sendSubmission"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One submission with its clips.
         * @description For: student, coach, manager.
         */
        get: operations["readSubmission"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Put right how a swing was sent: its student until it is answered, or the coach who has claimed it.
         * @description For: student, coach, manager.
         */
        patch: operations["correctSubmission"];
        trace?: never;
    };
    "/api/submissions/{id}/clips": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Put another clip in place of one that was refused.
         * @description For: student.
         */
        post: operations["addClip"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/clips/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One clip: how far it is, or why it was refused.
         * @description For: student, coach, manager.
         */
        get: operations["readClip"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/clips/{id}/grip-photo": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * A photo of the grip: how far it is, or why it was refused.
         * @description For: student, coach, manager.
         */
        get: operations["readGripPhoto"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/grip-photo": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The photo of the grip that was sent with a swing; null where there is none.
         * @description For: student, coach, manager.
         */
        get: operations["readGripPhotoOfSwing"];
        /**
         * Put a photo of the grip beside a swing that is sent but not answered, also in place of another photo.
         * @description For: student.
         */
        put: operations["putGripPhoto"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/inbox": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What waits for the coaches, by priority; pain first.
         * @description For: coach, manager.
         */
        get: operations["readInbox"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/inbox/load": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Whether what is promised for today can still be kept: what is due, who works, how long is left.
         * @description For: coach, manager.
         */
        get: operations["readInboxLoad"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/inbox/coaches": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Whom a claim can be handed to.
         * @description For: coach, manager.
         */
        get: operations["listCoaches"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/inbox/next": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Take the first row that nobody has, of one lead fault if asked; null when there is none.
         * @description For: coach, manager.
         */
        post: operations["claimNext"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/claim": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Take a submission, or renew a claim; it lapses after thirty minutes.
         * @description For: coach, manager.
         */
        post: operations["claimSubmission"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/release": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Give a claimed submission back to the inbox.
         * @description For: coach, manager.
         */
        post: operations["releaseSubmission"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/hand-over": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Give a submission to another coach with a line of why; the claim is theirs for four hours.
         * @description For: coach, manager.
         */
        post: operations["handOverSubmission"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/concerns/{id}/claim": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Take a concern, or renew a claim on it; it lapses after thirty minutes.
         * @description For: coach, manager.
         */
        post: operations["claimConcern"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/concerns/{id}/release": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Give a claimed concern back to the inbox.
         * @description For: coach, manager.
         */
        post: operations["releaseConcern"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/concerns/{id}/close": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Say what was done about a concern; it leaves the inbox. Held practice stays on hold.
         * @description For: coach, manager.
         */
        post: operations["closeConcern"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/live": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * A stream of server-sent events (text/event-stream): what happens in the academy, as ids. It begins with the event `open`, is kept alive by comments, says `missed` when events may have been lost, and ends with the session.
         * @description For: coach, manager.
         */
        get: operations["followLive"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/pain-seen": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Say that a pain report was read; unpins the row. Practice stays on hold until the student is well.
         * @description For: coach, manager.
         */
        post: operations["acknowledgePain"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/film-again": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Ask for a better clip, with a reason.
         * @description For: coach, manager.
         */
        post: operations["askToFilmAgain"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/review": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Everything the review screen needs.
         * @description For: coach, manager.
         */
        get: operations["openReview"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/clips/{clipId}/marks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The marks and observations of one clip; the ETag is their version.
         * @description For: coach, manager.
         */
        get: operations["readMarks"];
        /**
         * Save all marks and observations of one clip; answers with what they show.
         * @description For: coach, manager.
         */
        put: operations["saveMarks"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/measure": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * What marks and observations show: measurements, causes, what to mark next. Nothing is stored.
         * @description For: coach, manager.
         */
        post: operations["measureMarks"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/set": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What is known of the student’s set with the club of a swing: arcs of recent swings, the newest line test, the balls that were counted.
         * @description For: coach, manager.
         */
        get: operations["readStudentSet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/diagnosis": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The chosen diagnosis and the evidence as computed now.
         * @description For: coach, manager.
         */
        get: operations["readDiagnosis"];
        put?: never;
        /**
         * Choose the one cause that comes first, with up to three set-up ticks.
         * @description For: coach, manager.
         */
        post: operations["chooseDiagnosis"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/order": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Show the order of causes that is held back, without naming a cause first: nothing is learned from it.
         * @description For: coach, manager.
         */
        post: operations["showOrder"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/reply": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Save the draft of a reply.  The first save may send If-Match: "0".
         * @description For: coach, manager.
         */
        put: operations["saveReply"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/reply/send": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Send the reply. For half a minute it can be taken back; then the student is told, the drill becomes the programme, the check-in is set.
         * @description For: coach, manager.
         */
        post: operations["sendReply"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/reply/undo": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Take a reply back that is on its way: it is a draft again.
         * @description For: coach, manager.
         */
        post: operations["undoReply"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/replies/{id}/words": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Correct the words of a reply that has gone out, or its film; what it said before is kept, the student is told.
         * @description For: coach, manager.
         */
        put: operations["correctReply"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/comparable": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What this swing can be compared with: earlier ones of the student, and the academy’s collection.
         * @description For: coach, manager.
         */
        get: operations["listComparable"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/model-swings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The academy’s own collection of model swings, by name.
         * @description For: coach, manager.
         */
        get: operations["listModelSwings"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/clips/{id}/model-swing": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Take a clip into the collection, with the permission of the player in words.
         * @description For: manager.
         */
        post: operations["keepModelSwing"];
        /**
         * Take a clip out of the collection; what was allowed stays on record.
         * @description For: manager.
         */
        delete: operations["endModelSwing"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/talk-through": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The talk-through that goes with the reply; null where there is none.
         * @description For: coach, manager.
         */
        get: operations["readTalkThrough"];
        /**
         * Keep a recorded talk-through with the draft of the reply, in place of an earlier one.
         * @description For: coach, manager.
         */
        put: operations["saveTalkThrough"];
        post?: never;
        /**
         * Take the talk-through away from the draft of the reply.
         * @description For: coach, manager.
         */
        delete: operations["dropTalkThrough"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/talk-through/captions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Keep the captions of the talk-through that goes with the draft of the reply.
         * @description For: coach, manager.
         */
        put: operations["captionTalkThrough"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/home": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The student's home: the one thing to do next.
         * @description For: student.
         */
        get: operations["readHome"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/replies/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * A sent reply with its drill card.
         * @description For: student, coach, manager.
         */
        get: operations["readReply"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/replies/{id}/read": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * The reply was opened; only the first time counts.
         * @description For: student.
         */
        post: operations["markReplyRead"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/replies/{id}/said-read": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * The student says to have read the reply; the first time stands.
         * @description For: student.
         */
        post: operations["sayReplyRead"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/replies/{id}/questions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Ask back about a reply; the question stands in the inbox of the coaches.
         * @description For: student.
         */
        post: operations["askBack"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/replies/{id}/answers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Answer what a student asked back; the question leaves the inbox and the student gets a letter.
         * @description For: coach, manager.
         */
        post: operations["answerBack"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/trial": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The student's own trial: then and now, what was done, what it costs to go on.
         * @description For: student.
         */
        get: operations["readOwnTrial"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/trial/join": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Say that one would like to join. Nothing is charged: a manager gets in touch.
         * @description For: student.
         */
        post: operations["askToJoin"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * A programme with its entries.
         * @description For: student, coach, manager.
         */
        get: operations["readProgramme"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/programmes/{id}/practice": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Log practice; answers whether the rung is passed, and why.
         * @description For: student.
         */
        post: operations["logPractice"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/students": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The students of the academy, by name.
         * @description For: coach, manager.
         */
        get: operations["listStudents"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/students/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One student with the history of standing and the weeks.
         * @description For: coach, manager.
         */
        get: operations["readStudent"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/students/{id}/standing": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Change the standing of a student; kept in its history.
         * @description For: manager.
         */
        post: operations["changeStanding"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/students/{id}/trial": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Give a trial more days, also one that has just ended; kept in the history.
         * @description For: manager.
         */
        post: operations["extendTrial"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/students/{id}/about": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What a coach wants to know of a student while looking at a swing: wishes, note, last drill, timeline.
         * @description For: coach, manager.
         */
        get: operations["readAbout"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/students/{id}/note": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Keep the private note about a student; students never see it. The first save sends If-Match: "0".
         * @description For: coach, manager.
         */
        put: operations["saveCoachNote"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/students/{id}/lessons": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Note a lesson that was given in person; it stands on the timeline.
         * @description For: coach, manager.
         */
        post: operations["noteLesson"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/students/{id}/line-tests": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The line tests of a student, newest first, twenty at most.
         * @description For: student, coach, manager.
         */
        get: operations["listLineTests"];
        put?: never;
        /**
         * Note where up to ten brushes over a line began; answers with their mean and its doubt.
         * @description For: student, coach, manager.
         */
        post: operations["noteLineTest"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/then-and-now": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The first swing of the student and this one at the same moment, where both are marked there.
         * @description For: student, coach, manager.
         */
        get: operations["readThenAndNow"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/faults": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Faults and causes by count over seven and thirty days, and what to teach next.
         * @description For: coach, manager.
         */
        get: operations["readFaultsLately"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/library/teaching-clips": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The academy’s teaching clips, one a cause.
         * @description For: coach, manager.
         */
        get: operations["listTeachingClips"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/library/teaching-clips/{cause}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Keep the address of a film that explains a cause.
         * @description For: coach, manager.
         */
        put: operations["keepTeachingClip"];
        post?: never;
        /**
         * Take the teaching clip of a cause away.
         * @description For: coach, manager.
         */
        delete: operations["removeTeachingClip"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/trials": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Open trials, who is about to lapse and why, and the share that becomes paid.
         * @description For: manager.
         */
        get: operations["readTrials"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/mail": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Messages the service sent, newest first.
         * @description For: manager.
         */
        get: operations["listMail"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/library/drills": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The drills that can be given.
         * @description For: coach, manager.
         */
        get: operations["listDrills"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/submissions/{id}/programme-offer": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The programme that promises most for a cause under the days, minutes, place, balls, equipment, pains and age of this student, and what was left out. Without a cause: for the one chosen.
         * @description For: coach, manager.
         */
        get: operations["offerProgramme"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/phrases": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The phrases of the library, of the academy and one's own.
         * @description For: coach, manager.
         */
        get: operations["listPhrases"];
        put?: never;
        /**
         * Keep a phrase, for oneself or for all coaches of the academy.
         * @description For: coach, manager.
         */
        post: operations["savePhrase"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/phrases/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Take a phrase of one's own, or of the academy, out of the list.
         * @description For: coach, manager.
         */
        delete: operations["removePhrase"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/replies/{id}/starting-point": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Keep a sent reply as a starting point for the next player with the same cause.
         * @description For: coach, manager.
         */
        post: operations["keepStartingPoint"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/starting-points": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The replies kept as starting points, newest first.
         * @description For: coach, manager.
         */
        get: operations["listStartingPoints"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/starting-points/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Take a starting point out of the list.
         * @description For: coach, manager.
         */
        delete: operations["removeStartingPoint"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/reminders/stop/{token}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * End all reminders by the link of a letter; mail programs ask this way too (RFC 8058).
         * @description For: anyone.
         */
        post: operations["stopReminders"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/me/reminders": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Whether reminders are on, and the hours in which nothing comes that can wait.
         * @description For: student.
         */
        get: operations["readReminders"];
        /**
         * Switch reminders on or off; replies and check-ins still come. Quiet hours left out stay as they are.
         * @description For: student.
         */
        put: operations["chooseReminders"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/settings/reminders": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Which reminders the academy sends to its students.
         * @description For: manager.
         */
        get: operations["readReminderRules"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/settings/reminders/{kind}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Switch one reminder on or off for the whole academy.
         * @description For: manager.
         */
        put: operations["setReminderRule"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/settings/learning": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What the academy has learned: how often each cause was freely named, and the rate that comes of it.
         * @description For: coach, manager.
         */
        get: operations["readLearning"];
        /**
         * Switch learning on or off. Off: no order is held back, nothing is counted, the library’s rates hold.
         * @description For: manager.
         */
        put: operations["setLearning"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/settings/learning/reset": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Begin anew: nothing chosen up to now counts any more.
         * @description For: manager.
         */
        post: operations["resetLearning"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/coaches/turnaround": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What waits, and how long each coach takes to answer, over the last days.
         * @description For: manager.
         */
        get: operations["readCoaches"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/staff": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Coaches and managers, and the invitations that are still open.
         * @description For: manager.
         */
        get: operations["listStaff"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/staff/invitations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Invite a coach or a manager by mail; inviting an address again sends a new link and voids the old one.
         * @description For: manager.
         */
        post: operations["inviteStaff"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/staff/invitations/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Take an invitation back: its link stops working.
         * @description For: manager.
         */
        delete: operations["revokeInvitation"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/staff/members/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * End the membership of a coach or manager; claims are given back. The last manager stays.
         * @description For: manager.
         */
        delete: operations["endStaff"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        ChosenDiagnosis: {
            /** Format: uuid */
            id: string;
            /** @enum {string} */
            fault: "fat" | "thin" | "topped" | "slice" | "hook" | "push" | "pull" | "shank" | "heel" | "toe" | "sky";
            chosenCause: string;
            setUpTicks: ("grip" | "handle" | "hips" | "ball")[];
            overruled: boolean;
            blind: boolean;
            by: string;
            /** Format: date-time */
            at: string;
        };
        Clip: {
            /** Format: uuid */
            id: string;
            submissionId: string | null;
            fileName: string;
            /** @enum {string} */
            view: "face-on" | "down-the-line";
            /** @enum {string} */
            swingLength: "rehearsal" | "hip-high" | "three-quarter" | "full";
            /** @enum {string} */
            status: "uploading" | "uploaded" | "preparing" | "ready" | "refused" | "expired" | "erased";
            lengthBytes: number;
            percent: number;
            refusal: {
                code: string;
                words: string;
            } | null;
            picture: {
                widthPx: number;
                heightPx: number;
                frames: number;
                fps: number;
                durationMs: number;
            } | null;
            media: {
                rendition: string;
                poster: string;
                frameTimes: string;
                strip: string | null;
            } | null;
            suggestion: {
                impact: {
                    frame: number;
                    impactMs: number;
                    uMs: number;
                    uFrames: number;
                    /** @enum {string} */
                    confidence: "likely" | "possible" | "unsure";
                    others: number;
                } | null;
                window: {
                    first: number;
                    last: number;
                } | null;
                strip: number[];
            } | null;
            /** Format: date-time */
            createdAt: string;
        };
        DrillCard: {
            id: string;
            name: string;
            purpose: string;
            feel: string;
            steps: string[];
            stations: {
                /** @enum {string} */
                place: "mat" | "grass" | "home";
                needs: string[];
                steps: string[];
                objects: {
                    what: string;
                    xMm: number;
                    yMm: number;
                    lengthMm: number;
                    widthMm: number;
                    rotationDeg: number;
                    label: string;
                }[];
            }[];
            ladder: {
                id: string;
                ball: boolean;
                balls: number;
                speedPercent: number;
                clean: string;
                filmed: boolean;
            }[];
            overCorrection: string;
            exaggeration: string;
            exaggerationHow: string;
            minutes: number;
            ballsAtMost: number;
            cautions: string[];
        };
        Entry: {
            /** Format: uuid */
            id: string;
            drillId: string;
            rung: string;
            balls: number;
            clean: number;
            filmed: boolean;
            /** @enum {string} */
            pain: "none" | "new" | "worse";
            /** Format: date */
            localDate: string;
            /** Format: date-time */
            at: string;
            /** @enum {string} */
            verdict: "passed" | "stay" | "back" | "hold";
            words: string;
        };
        Evidence: {
            /** @enum {string} */
            fault: "fat" | "thin" | "topped" | "slice" | "hook" | "push" | "pull" | "shank" | "heel" | "toe" | "sky";
            readings: components["schemas"]["Reading"][];
            refusals: {
                key: string;
                words: string;
            }[];
            causes: components["schemas"]["RankedCause"][];
            first: string | null;
            next: {
                /** @enum {string} */
                kind: "mark" | "observation";
                position: string | null;
                point: string;
            } | null;
            fatRisk: ({
                /** @constant */
                kind: "told";
                fat: number;
                fatLow: number;
                fatHigh: number;
                thin: number;
                missesGround: number;
                goal: number;
                forward: {
                    byMm: number;
                    lowMm: number;
                    highMm: number;
                    thin: number;
                    missesGround: number;
                };
                higher: {
                    byMm: number;
                    lowMm: number;
                    highMm: number;
                    thin: number;
                    missesGround: number;
                };
                lowPointMm: {
                    value: number;
                    u: number;
                };
                scatterMm: number;
                depthMm: {
                    value: number;
                    u: number;
                };
                /** @enum {string} */
                depthFrom: "line-test" | "balls";
                radiusMm: {
                    value: number;
                    u: number;
                };
                swings: number;
                setUps: number;
                used: string[];
                missing: string[];
            } | {
                /** @constant */
                kind: "refused";
                /** @enum {string} */
                why: "driver" | "sand" | "no-swing" | "no-depth" | "do-not-fit";
                words: string;
            }) | null;
            methodVersion: string;
        };
        Home: {
            next: {
                /** @enum {string} */
                kind: "consent-first" | "send-first" | "put-clip-right" | "wait" | "read-reply" | "practise" | "film-check-in" | "send-again" | "hold";
                words: string;
                href: string | null;
            };
            /** @enum {string} */
            standing: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
            trial: {
                day: number;
                days: number;
                /** Format: date-time */
                endsAt: string;
                priceWords: string;
            } | null;
            programme: components["schemas"]["Programme"] | null;
            progress: {
                /** @enum {string} */
                verdict: "better" | "no-clear-change" | "worse" | "over-correcting";
                words: string;
                balls: string | null;
                basis: string;
                /** Format: date-time */
                since: string;
                /** Format: date-time */
                latest: string;
            } | null;
            latest: components["schemas"]["Submission"][];
            replies: {
                /** Format: uuid */
                id: string;
                /** Format: date-time */
                sentAt: string;
                readAt: string | null;
                sentence: string;
            }[];
            weeks: {
                /** Format: date */
                week: string;
                entries: number;
                balls: number;
                clean: number;
                days: number;
            }[];
            cautions: string[];
        };
        InboxItem: {
            /** Format: uuid */
            id: string;
            student: {
                /** Format: uuid */
                id: string;
                name: string;
                /** @enum {string} */
                standing: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
                trialDay: number | null;
                trialEndsAt: string | null;
            };
            reasons: components["schemas"]["Reason"][];
            /** Format: date-time */
            raisedAt: string;
            /** Format: date-time */
            answerBy: string;
            /** @enum {string} */
            block: "pain" | "late" | "before-noon" | "today" | "tomorrow" | "later";
            claim: {
                /** Format: uuid */
                membershipId: string;
                name: string;
                /** Format: date-time */
                expiresAt: string;
                handed: {
                    by: string;
                    why: string;
                } | null;
            } | null;
            last: {
                /** Format: uuid */
                id: string;
                cause: string;
                drillId: string;
                rung: string;
                /** @enum {string} */
                status: "open" | "held" | "done" | "replaced";
                lastVerdict: ("passed" | "stay" | "back" | "hold") | null;
            } | null;
            /** @constant */
            kind: "swing";
            /** @enum {string} */
            club: "driver" | "fairway" | "hybrid" | "5-iron" | "6-iron" | "7-iron" | "8-iron" | "9-iron" | "wedge";
            /** @enum {string} */
            view: "face-on" | "down-the-line";
            /** @enum {string} */
            swingLength: "rehearsal" | "hip-high" | "three-quarter" | "full";
            leadFault: ("solid" | "fat" | "thin" | "topped" | "heel" | "toe" | "shank" | "sky") | null;
            tally: components["schemas"]["Tally"];
            note: string;
            /** @enum {string} */
            pain: "none" | "new" | "worse";
            painSeenAt: string | null;
            poster: string | null;
        } | {
            /** Format: uuid */
            id: string;
            student: {
                /** Format: uuid */
                id: string;
                name: string;
                /** @enum {string} */
                standing: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
                trialDay: number | null;
                trialEndsAt: string | null;
            };
            reasons: components["schemas"]["Reason"][];
            /** Format: date-time */
            raisedAt: string;
            /** Format: date-time */
            answerBy: string;
            /** @enum {string} */
            block: "pain" | "late" | "before-noon" | "today" | "tomorrow" | "later";
            claim: {
                /** Format: uuid */
                membershipId: string;
                name: string;
                /** Format: date-time */
                expiresAt: string;
                handed: {
                    by: string;
                    why: string;
                } | null;
            } | null;
            last: {
                /** Format: uuid */
                id: string;
                cause: string;
                drillId: string;
                rung: string;
                /** @enum {string} */
                status: "open" | "held" | "done" | "replaced";
                lastVerdict: ("passed" | "stay" | "back" | "hold") | null;
            } | null;
            /** @constant */
            kind: "pain";
            /** @enum {string} */
            pain: "new" | "worse";
        } | {
            /** Format: uuid */
            id: string;
            student: {
                /** Format: uuid */
                id: string;
                name: string;
                /** @enum {string} */
                standing: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
                trialDay: number | null;
                trialEndsAt: string | null;
            };
            reasons: components["schemas"]["Reason"][];
            /** Format: date-time */
            raisedAt: string;
            /** Format: date-time */
            answerBy: string;
            /** @enum {string} */
            block: "pain" | "late" | "before-noon" | "today" | "tomorrow" | "later";
            claim: {
                /** Format: uuid */
                membershipId: string;
                name: string;
                /** Format: date-time */
                expiresAt: string;
                handed: {
                    by: string;
                    why: string;
                } | null;
            } | null;
            last: {
                /** Format: uuid */
                id: string;
                cause: string;
                drillId: string;
                rung: string;
                /** @enum {string} */
                status: "open" | "held" | "done" | "replaced";
                lastVerdict: ("passed" | "stay" | "back" | "hold") | null;
            } | null;
            /** @constant */
            kind: "trial-ending";
        } | {
            /** Format: uuid */
            id: string;
            student: {
                /** Format: uuid */
                id: string;
                name: string;
                /** @enum {string} */
                standing: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
                trialDay: number | null;
                trialEndsAt: string | null;
            };
            reasons: components["schemas"]["Reason"][];
            /** Format: date-time */
            raisedAt: string;
            /** Format: date-time */
            answerBy: string;
            /** @enum {string} */
            block: "pain" | "late" | "before-noon" | "today" | "tomorrow" | "later";
            claim: {
                /** Format: uuid */
                membershipId: string;
                name: string;
                /** Format: date-time */
                expiresAt: string;
                handed: {
                    by: string;
                    why: string;
                } | null;
            } | null;
            last: {
                /** Format: uuid */
                id: string;
                cause: string;
                drillId: string;
                rung: string;
                /** @enum {string} */
                status: "open" | "held" | "done" | "replaced";
                lastVerdict: ("passed" | "stay" | "back" | "hold") | null;
            } | null;
            /** @constant */
            kind: "question";
            words: string;
            /** Format: uuid */
            replyId: string;
        } | {
            /** Format: uuid */
            id: string;
            student: {
                /** Format: uuid */
                id: string;
                name: string;
                /** @enum {string} */
                standing: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
                trialDay: number | null;
                trialEndsAt: string | null;
            };
            reasons: components["schemas"]["Reason"][];
            /** Format: date-time */
            raisedAt: string;
            /** Format: date-time */
            answerBy: string;
            /** @enum {string} */
            block: "pain" | "late" | "before-noon" | "today" | "tomorrow" | "later";
            claim: {
                /** Format: uuid */
                membershipId: string;
                name: string;
                /** Format: date-time */
                expiresAt: string;
                handed: {
                    by: string;
                    why: string;
                } | null;
            } | null;
            last: {
                /** Format: uuid */
                id: string;
                cause: string;
                drillId: string;
                rung: string;
                /** @enum {string} */
                status: "open" | "held" | "done" | "replaced";
                lastVerdict: ("passed" | "stay" | "back" | "hold") | null;
            } | null;
            /** @constant */
            kind: "stuck";
        };
        Join: {
            name: string;
            /** Format: email */
            email: string;
            password: string;
            /** @enum {string} */
            hand: "right" | "left";
            /** @enum {string} */
            ageGroup: "adult" | "junior" | "senior";
            zone: string;
            guardian: {
                name: string;
                relation: string;
                /** Format: email */
                email: string;
                consents: boolean;
                purposes?: {
                    quality: boolean;
                    teaching: boolean;
                };
            } | null;
        };
        MailRow: {
            /** Format: uuid */
            id: string;
            to: string;
            kind: string;
            subject: string;
            text: string;
            /** Format: date-time */
            at: string;
        };
        Mark: {
            /** @enum {string} */
            position: "address" | "shaft-parallel-back" | "lead-arm-parallel-back" | "top" | "lead-arm-parallel-down" | "shaft-parallel-down" | "impact" | "shaft-parallel-through" | "finish";
            /** @enum {string} */
            point: "ball" | "lead-heel" | "trail-heel" | "lead-ankle" | "trail-ankle" | "hip-middle" | "neck-base" | "head-centre" | "lead-shoulder" | "lead-elbow" | "lead-wrist" | "grip-end" | "clubhead" | "shaft-mid" | "lead-thigh-inside" | "thigh-front" | "seat-line" | "toe-line" | "lead-toe" | "trail-toe" | "hands" | "target-stick" | "target-stick-ahead";
            frame: number;
            x: number;
            y: number;
            /** @enum {string} */
            source: "coach" | "suggested" | "carried";
        };
        Marking: {
            /** Format: uuid */
            clipId: string;
            version: number;
            marks: components["schemas"]["Mark"][];
            observations: components["schemas"]["Observation"][];
            trail: {
                frame: number;
                x: number;
                y: number;
            }[];
        };
        Me: {
            /** Format: uuid */
            personId: string;
            name: string;
            email: string;
            academies: {
                /** Format: uuid */
                id: string;
                slug: string;
                name: string;
                /** @enum {string} */
                role: "coach" | "manager" | "student";
            }[];
            academy: {
                /** Format: uuid */
                id: string;
                slug: string;
                name: string;
                zone: string;
            } | null;
            membershipId: string | null;
            role: ("coach" | "manager" | "student") | null;
            student: {
                /** Format: uuid */
                id: string;
                /** @enum {string} */
                hand: "right" | "left";
                /** @enum {string} */
                standing: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
                trialEndsAt: string | null;
            } | null;
        };
        NewSubmission: {
            clipIds: string[];
            /** @enum {string} */
            club: "driver" | "fairway" | "hybrid" | "5-iron" | "6-iron" | "7-iron" | "8-iron" | "9-iron" | "wedge";
            /** @enum {string} */
            lie: "tee" | "mat" | "fairway" | "rough" | "sand" | "slope" | "net";
            tally: components["schemas"]["Tally"];
            /** @enum {string} */
            startLine: "left" | "straight" | "right" | "cannot-see";
            /** @enum {string} */
            curve: "left" | "none" | "right" | "cannot-see";
            /** @enum {string} */
            typical: "usual" | "best" | "unsure";
            note: string;
            /** @enum {string} */
            pain: "none" | "new" | "worse";
            painNote: string;
            checkInId: string | null;
            /** @enum {string} */
            swingLength?: "rehearsal" | "hip-high" | "three-quarter" | "full";
            gripPhotoId?: string | null;
        };
        Observation: {
            key: string;
            /** @enum {string} */
            answer: "yes" | "no" | "cannot-tell";
        };
        Plan: {
            drillId: string;
            /** @enum {string} */
            place: "mat" | "grass" | "home";
            /** @enum {string} */
            exaggeration: "mild" | "firm" | "strong";
            weeklyMinutes: number;
            firstCheckInDays: number;
            daysPerWeek?: number;
            minutesPerDay?: number;
            second?: {
                drillId: string;
                minutes: number;
            } | null;
        };
        Problem: {
            type: string;
            title: string;
            status: number;
            /** @enum {string} */
            code: "bad-request" | "not-signed-in" | "wrong-sign-in" | "choose-academy" | "not-allowed" | "wrong-origin" | "consent-missing" | "not-found" | "link-used-up" | "last-manager" | "already-claimed" | "not-claimed" | "already-answered" | "already-a-member" | "wrong-state" | "same-key-at-work" | "upload-elsewhere" | "changed-meanwhile" | "too-large" | "not-a-video" | "not-a-photo" | "key-used-otherwise" | "tally-over-total" | "tally-empty" | "clip-not-yours" | "clip-missing" | "mark-outside-frame" | "too-much-at-once" | "thread-full" | "standing-not-possible" | "practice-not-possible" | "practice-held" | "upload-busy" | "precondition-missing" | "too-many-tries" | "unexpected" | "busy" | "no-room";
            detail: string;
            requestId: string;
            fields?: {
                path: string;
                message: string;
            }[];
        };
        Programme: {
            /** Format: uuid */
            id: string;
            cause: string;
            causeName: string;
            /** @enum {string} */
            place: "mat" | "grass" | "home";
            weeklyMinutes: number;
            rung: string;
            /** @enum {string} */
            status: "open" | "held" | "done" | "replaced";
            holdReason: string | null;
            drill: components["schemas"]["DrillCard"];
            session: {
                daysPerWeek: number | null;
                minutes: number;
                blocks: number[];
                restSeconds: number;
                filmOneOf: number;
                mixed: boolean;
                heavy: boolean;
                words: string[];
            };
            second: {
                drill: components["schemas"]["DrillCard"];
                minutes: number;
                rung: string;
                done: boolean;
            } | null;
            overCorrection: {
                /** @enum {string} */
                how: "into" | "through";
                words: string;
            } | null;
            entries: components["schemas"]["Entry"][];
            nextCheckIn: {
                /** Format: uuid */
                id: string;
                /** @enum {string} */
                asks: "practice" | "clip";
                /** Format: date-time */
                dueAt: string;
            } | null;
            /** Format: date-time */
            createdAt: string;
        };
        PublicAcademy: {
            slug: string;
            name: string;
            trialDays: number;
            /** @enum {string} */
            trialStarts: "joining" | "first-swing";
            priceWords: string;
            promiseHours: number;
            consentAge: number;
            consentText: {
                version: string;
                text: string;
            };
        };
        RankedCause: {
            causeId: string;
            name: string;
            group: string;
            tick: ("grip" | "handle" | "hips" | "ball") | null;
            probability: number;
            share: number;
            score: number;
            factors: string[];
            unseen: string | null;
        };
        Reading: {
            key: string;
            name: string;
            /** @enum {string} */
            unit: "mm" | "deg" | "percent" | "ratio";
            value: number;
            u: number;
            proxy: boolean;
            band: {
                low: number | null;
                high: number | null;
                label: string;
            } | null;
            probabilityBelow: number;
            probabilityAbove: number;
        };
        Reason: {
            /** @constant */
            kind: "pain";
            /** @enum {string} */
            pain: "new" | "worse";
        } | {
            /** @constant */
            kind: "fault";
            /** @enum {string} */
            fault: "solid" | "fat" | "thin" | "topped" | "heel" | "toe" | "shank" | "sky";
            probability: number;
            headStartHours: number;
        } | {
            /** @constant */
            kind: "trial-ending";
            /** Format: date-time */
            endsAt: string;
        } | {
            /** @constant */
            kind: "promise";
            /** Format: date-time */
            answerBy: string;
        } | {
            /** @constant */
            kind: "old-fault";
        } | {
            /** @constant */
            kind: "stuck";
        } | {
            /** @constant */
            kind: "progress";
        } | {
            /** @constant */
            kind: "promise-at-risk";
        } | {
            /** @constant */
            kind: "first-swing";
        } | {
            /** @constant */
            kind: "check-in";
        };
        ReplyDraft: {
            /** Format: uuid */
            id: string;
            /** @enum {string} */
            status: "draft" | "sending" | "sent";
            words: string;
            cause: string | null;
            setUpTicks: ("grip" | "handle" | "hips" | "ball")[];
            frames: components["schemas"]["ReplyFrame"][];
            plan: components["schemas"]["Plan"] | null;
            version: number;
            sentAt: string | null;
            sendsAt: string | null;
            correctedAt: string | null;
            moreCauses: string[];
            moreAgreedAt: string | null;
            teachingClip: {
                cause: string;
                title: string;
                url: string;
                words: string;
            } | null;
            withTalk: boolean;
        };
        ReplyFrame: {
            /** Format: uuid */
            clipId: string;
            frame: number;
            position: string;
            caption: string;
        };
        Review: {
            submission: components["schemas"]["Submission"];
            marking: components["schemas"]["Marking"][];
            evidence: {
                /** @enum {string} */
                fault: "fat" | "thin" | "topped" | "slice" | "hook" | "push" | "pull" | "shank" | "heel" | "toe" | "sky";
                readings: components["schemas"]["Reading"][];
                refusals: {
                    key: string;
                    words: string;
                }[];
                causes: components["schemas"]["RankedCause"][];
                first: string | null;
                next: {
                    /** @enum {string} */
                    kind: "mark" | "observation";
                    position: string | null;
                    point: string;
                } | null;
                fatRisk: ({
                    /** @constant */
                    kind: "told";
                    fat: number;
                    fatLow: number;
                    fatHigh: number;
                    thin: number;
                    missesGround: number;
                    goal: number;
                    forward: {
                        byMm: number;
                        lowMm: number;
                        highMm: number;
                        thin: number;
                        missesGround: number;
                    };
                    higher: {
                        byMm: number;
                        lowMm: number;
                        highMm: number;
                        thin: number;
                        missesGround: number;
                    };
                    lowPointMm: {
                        value: number;
                        u: number;
                    };
                    scatterMm: number;
                    depthMm: {
                        value: number;
                        u: number;
                    };
                    /** @enum {string} */
                    depthFrom: "line-test" | "balls";
                    radiusMm: {
                        value: number;
                        u: number;
                    };
                    swings: number;
                    setUps: number;
                    used: string[];
                    missing: string[];
                } | {
                    /** @constant */
                    kind: "refused";
                    /** @enum {string} */
                    why: "driver" | "sand" | "no-swing" | "no-depth" | "do-not-fit";
                    words: string;
                }) | null;
                methodVersion: string;
                /** Format: uuid */
                clipId: string;
            }[];
            set: {
                lie: string;
                setUp: string;
                swings: {
                    clipId: string;
                    setUp: string;
                    /** @enum {string} */
                    swingLength: "rehearsal" | "hip-high" | "three-quarter" | "full";
                    arc: {
                        lowPointMm: number;
                        uOwnMm: number;
                        uTiltMm: number;
                        radiusMm: number;
                        uRadiusMm: number;
                        perRadius: number;
                    };
                }[];
                lineTestMm: number[] | null;
                balls: {
                    fat: number;
                    of: number;
                } | null;
            } | null;
            heldBack: boolean;
            named: string | null;
            baseRates: {
                [key: string]: number;
            };
            diagnosis: components["schemas"]["ChosenDiagnosis"] | null;
            reply: components["schemas"]["ReplyDraft"] | null;
            openProgramme: {
                /** Format: uuid */
                id: string;
                cause: string;
                drillId: string;
                rung: string;
                status: string;
                entries: number;
                last: {
                    /** Format: date */
                    localDate: string;
                    drillId: string;
                    rung: string;
                    balls: number;
                    clean: number;
                    /** @enum {string} */
                    verdict: "passed" | "stay" | "back" | "hold";
                } | null;
            } | null;
            about: {
                goal: string | null;
                usualMiss: string | null;
                /** @enum {string} */
                units: "metric" | "imperial";
            };
            earlier: {
                /** Format: uuid */
                id: string;
                /** Format: date-time */
                sentAt: string;
                /** @enum {string} */
                status: "preparing" | "needs-clip" | "waiting" | "answered" | "film-again" | "withdrawn";
                cause: string | null;
            }[];
        };
        SignIn: {
            /** Format: email */
            email: string;
            password: string;
        };
        StudentDetail: {
            /** Format: uuid */
            id: string;
            name: string;
            email: string;
            /** @enum {string} */
            standing: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
            /** @enum {string} */
            hand: "right" | "left";
            /** @enum {string} */
            ageGroup: "adult" | "junior" | "senior";
            trialDay: number | null;
            trialEndsAt: string | null;
            /** Format: date-time */
            joinedAt: string;
            firstSwingAt: string | null;
            lastSwingAt: string | null;
            lastReplyAt: string | null;
            replyHours: number | null;
            practice: {
                entries: number;
                balls: number;
                clean: number;
                days: number;
                daysThisWeek: number;
                daysPlanned: number;
            };
            verdict: ("better" | "no-clear-change" | "worse" | "over-correcting") | null;
            cause: string | null;
            rung: string | null;
            flags: ("waiting" | "pain" | "consent" | "unread")[];
            progress: {
                /** @enum {string} */
                verdict: "better" | "no-clear-change" | "worse" | "over-correcting";
                words: string;
                balls: string | null;
                basis: string;
                /** Format: date-time */
                since: string;
                /** Format: date-time */
                latest: string;
            } | null;
            means: {
                usualMiss: ("fat" | "thin" | "topped" | "heel" | "toe" | "shank" | "sky") | null;
                daysPerWeek: number | null;
                minutesPerDay: number | null;
                place: ("mat" | "grass" | "home") | null;
                goal: string | null;
                body: string | null;
                bodyAgreed: boolean;
                balls: number | null;
                equipment: ("club" | "balls" | "soft-balls" | "towel" | "tape" | "rug" | "mirror" | "cushion" | "bag" | "stick" | "tees" | "pen" | "phone" | "slope")[];
                pains: ("low-back-pain" | "wrist-pain" | "elbow-pain" | "hip-pain" | "knee-pain" | "shoulder-pain" | "neck-pain")[];
            };
            standings: {
                from: ("invited" | "trial" | "lapsed" | "paid" | "paused" | "left") | null;
                /** @enum {string} */
                to: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
                reason: string;
                by: string;
                /** Format: date-time */
                at: string;
            }[];
            weeks: {
                /** Format: date */
                week: string;
                entries: number;
                balls: number;
                clean: number;
                days: number;
                swings: number;
                tallyBalls: number;
                tallyFat: number;
            }[];
        };
        StudentReply: {
            /** Format: uuid */
            id: string;
            /** Format: uuid */
            submissionId: string;
            coach: string;
            /** Format: date-time */
            sentAt: string;
            readAt: string | null;
            saidReadAt: string | null;
            sentence: string;
            causes: string[];
            words: string;
            setUpTicks: ("grip" | "handle" | "hips" | "ball")[];
            more: string[];
            frames: {
                /** Format: uuid */
                clipId: string;
                frame: number;
                timeS: number;
                caption: string;
                rendition: string;
                poster: string;
                still: string | null;
                described: string;
                marks: {
                    point: string;
                    name: string;
                    x: number;
                    y: number;
                }[];
                widthPx: number;
                heightPx: number;
            }[];
            programme: components["schemas"]["Programme"] | null;
            earlier: {
                words: string;
                teachingClip: {
                    cause: string;
                    title: string;
                    url: string;
                    words: string;
                } | null;
                /** Format: date-time */
                at: string;
            }[];
            correctedAt: string | null;
            version: number;
            thread: {
                /** Format: uuid */
                id: string;
                /** @enum {string} */
                voice: "student" | "coach";
                name: string;
                words: string;
                /** Format: date-time */
                at: string;
            }[];
            talkThrough: {
                /** Format: uuid */
                id: string;
                /** Format: uuid */
                clipId: string;
                durationMs: number;
                sound: string;
                track: {
                    atMs: number;
                    frame: number;
                    times: number;
                    x: number;
                    y: number;
                    point: {
                        x: number;
                        y: number;
                    } | null;
                }[];
                captions: {
                    atMs: number;
                    words: string;
                }[];
                picture: {
                    widthPx: number;
                    heightPx: number;
                    frames: number;
                    fps: number;
                    durationMs: number;
                };
                media: {
                    rendition: string;
                    poster: string;
                    frameTimes: string;
                    strip: string | null;
                };
            } | null;
            teachingClip: {
                cause: string;
                title: string;
                url: string;
                words: string;
            } | null;
            cautions: string[];
        };
        StudentRow: {
            /** Format: uuid */
            id: string;
            name: string;
            email: string;
            /** @enum {string} */
            standing: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
            /** @enum {string} */
            hand: "right" | "left";
            /** @enum {string} */
            ageGroup: "adult" | "junior" | "senior";
            trialDay: number | null;
            trialEndsAt: string | null;
            /** Format: date-time */
            joinedAt: string;
            firstSwingAt: string | null;
            lastSwingAt: string | null;
            lastReplyAt: string | null;
            replyHours: number | null;
            practice: {
                entries: number;
                balls: number;
                clean: number;
                days: number;
                daysThisWeek: number;
                daysPlanned: number;
            };
            verdict: ("better" | "no-clear-change" | "worse" | "over-correcting") | null;
            cause: string | null;
            rung: string | null;
            flags: ("waiting" | "pain" | "consent" | "unread")[];
        };
        Submission: {
            /** Format: uuid */
            id: string;
            student: {
                /** Format: uuid */
                id: string;
                name: string;
                /** @enum {string} */
                hand: "right" | "left";
                /** @enum {string} */
                ageGroup: "adult" | "junior" | "senior";
                /** @enum {string} */
                standing: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
                trialStartedAt: string | null;
                trialEndsAt: string | null;
            };
            /** @enum {string} */
            status: "preparing" | "needs-clip" | "waiting" | "answered" | "film-again" | "withdrawn";
            /** @enum {string} */
            club: "driver" | "fairway" | "hybrid" | "5-iron" | "6-iron" | "7-iron" | "8-iron" | "9-iron" | "wedge";
            /** @enum {string} */
            lie: "tee" | "mat" | "fairway" | "rough" | "sand" | "slope" | "net";
            tally: components["schemas"]["Tally"];
            leadFault: ("solid" | "fat" | "thin" | "topped" | "heel" | "toe" | "shank" | "sky") | null;
            /** @enum {string} */
            startLine: "left" | "straight" | "right" | "cannot-see";
            /** @enum {string} */
            curve: "left" | "none" | "right" | "cannot-see";
            /** @enum {string} */
            typical: "usual" | "best" | "unsure";
            note: string;
            /** @enum {string} */
            pain: "none" | "new" | "worse";
            painNote: string;
            painSeenAt: string | null;
            /** Format: date-time */
            sentAt: string;
            /** Format: date-time */
            answerBy: string;
            claim: {
                /** Format: uuid */
                membershipId: string;
                name: string;
                /** Format: date-time */
                expiresAt: string;
            } | null;
            clips: components["schemas"]["Clip"][];
            replyId: string | null;
            answeredAt: string | null;
            version: number;
        };
        Tally: {
            balls: number;
            solid: number;
            fat: number;
            thin: number;
            topped: number;
            heel: number;
            toe: number;
            shank: number;
            sky: number;
            counted: boolean;
        };
        TrialRow: {
            student: {
                /** Format: uuid */
                id: string;
                name: string;
            };
            day: number;
            days: number;
            /** Format: date-time */
            endsAt: string;
            firstSwingAt: string | null;
            firstReplyAt: string | null;
            replyHours: number | null;
            replyReadAt: string | null;
            practiceEntries: number;
            rungsPassed: number;
            /** @enum {string} */
            stop: "no-first-swing" | "waits-for-us" | "reply-unread" | "held" | "no-practice" | "moving" | "ending";
            nextAction: string;
            joinAskedAt: string | null;
        };
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    signIn: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SignIn"];
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    signOut: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    everywhere: boolean;
                };
            };
        };
        responses: {
            /** @description Done. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readMe: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    chooseAcademy: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    /** Format: uuid */
                    academyId: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readAcademy: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                academy: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PublicAcademy"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    joinAcademy: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path: {
                academy: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Join"];
            };
        };
        responses: {
            /** @description Done. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    askReset: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    /** Format: email */
                    email: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    resetPassword: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    token: string;
                    password: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readInvitation: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    token: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        academyName: string;
                        name: string;
                        email: string;
                        /** @enum {string} */
                        role: "coach" | "manager";
                        known: boolean;
                        /** Format: date-time */
                        expiresAt: string;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    acceptInvitation: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    token: string;
                    name: string;
                    password: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readGuardian: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @enum {string} */
                        state: "not-needed" | "missing" | "asked" | "given" | "withdrawn";
                        guardian: {
                            name: string;
                            email: string;
                        } | null;
                        at: string | null;
                        textVersion: string | null;
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    askGuardian: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    name: string;
                    relation: string;
                    /** Format: email */
                    email: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @enum {string} */
                        state: "not-needed" | "missing" | "asked" | "given" | "withdrawn";
                        guardian: {
                            name: string;
                            email: string;
                        } | null;
                        at: string | null;
                        textVersion: string | null;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readConsent: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    academy: string;
                    token: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        academyName: string;
                        studentName: string;
                        guardianName: string;
                        /** @enum {string} */
                        state: "asked" | "given" | "withdrawn";
                        text: {
                            version: string;
                            text: string;
                        };
                        purposes: {
                            quality: boolean;
                            teaching: boolean;
                        };
                        /** Format: date-time */
                        at: string;
                        safeguardContact: string;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    giveConsent: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    academy: string;
                    token: string;
                    version: string;
                    purposes: {
                        quality: boolean;
                        teaching: boolean;
                    };
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        academyName: string;
                        studentName: string;
                        guardianName: string;
                        /** @enum {string} */
                        state: "asked" | "given" | "withdrawn";
                        text: {
                            version: string;
                            text: string;
                        };
                        purposes: {
                            quality: boolean;
                            teaching: boolean;
                        };
                        /** Format: date-time */
                        at: string;
                        safeguardContact: string;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    withdrawConsent: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    academy: string;
                    token: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        academyName: string;
                        studentName: string;
                        guardianName: string;
                        /** @enum {string} */
                        state: "asked" | "given" | "withdrawn";
                        text: {
                            version: string;
                            text: string;
                        };
                        purposes: {
                            quality: boolean;
                            teaching: boolean;
                        };
                        /** Format: date-time */
                        at: string;
                        safeguardContact: string;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    recordWithdrawal: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** Format: uuid */
                        studentId: string;
                        /** Format: date-time */
                        at: string;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readMeans: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        usualMiss: ("fat" | "thin" | "topped" | "heel" | "toe" | "shank" | "sky") | null;
                        daysPerWeek: number | null;
                        minutesPerDay: number | null;
                        place: ("mat" | "grass" | "home") | null;
                        goal: string | null;
                        body: string | null;
                        bodyAgreed: boolean;
                        balls: number | null;
                        equipment: ("club" | "balls" | "soft-balls" | "towel" | "tape" | "rug" | "mirror" | "cushion" | "bag" | "stick" | "tees" | "pen" | "phone" | "slope")[];
                        pains: ("low-back-pain" | "wrist-pain" | "elbow-pain" | "hip-pain" | "knee-pain" | "shoulder-pain" | "neck-pain")[];
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    saveMeans: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    usualMiss: ("fat" | "thin" | "topped" | "heel" | "toe" | "shank" | "sky") | null;
                    daysPerWeek: number | null;
                    minutesPerDay: number | null;
                    place: ("mat" | "grass" | "home") | null;
                    goal: string | null;
                    body: string | null;
                    bodyAgreed: boolean;
                    balls?: number | null;
                    equipment?: ("club" | "balls" | "soft-balls" | "towel" | "tape" | "rug" | "mirror" | "cushion" | "bag" | "stick" | "tees" | "pen" | "phone" | "slope")[];
                    pains?: ("low-back-pain" | "wrist-pain" | "elbow-pain" | "hip-pain" | "knee-pain" | "shoulder-pain" | "neck-pain")[];
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        usualMiss: ("fat" | "thin" | "topped" | "heel" | "toe" | "shank" | "sky") | null;
                        daysPerWeek: number | null;
                        minutesPerDay: number | null;
                        place: ("mat" | "grass" | "home") | null;
                        goal: string | null;
                        body: string | null;
                        bodyAgreed: boolean;
                        balls: number | null;
                        equipment: ("club" | "balls" | "soft-balls" | "towel" | "tape" | "rug" | "mirror" | "cushion" | "bag" | "stick" | "tees" | "pen" | "phone" | "slope")[];
                        pains: ("low-back-pain" | "wrist-pain" | "elbow-pain" | "hip-pain" | "knee-pain" | "shoulder-pain" | "neck-pain")[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listSubmissions: {
        parameters: {
            query?: {
                after?: string;
                limit?: number;
                studentId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["Submission"][];
                        next: string | null;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    sendSubmission: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewSubmission"];
            };
        };
        responses: {
            /** @description Done. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Submission"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readSubmission: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Submission"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    correctSubmission: {
        parameters: {
            query?: never;
            header: {
                /** @description The version that was changed, in quotes: the ETag. */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    /** @enum {string} */
                    club?: "driver" | "fairway" | "hybrid" | "5-iron" | "6-iron" | "7-iron" | "8-iron" | "9-iron" | "wedge";
                    /** @enum {string} */
                    lie?: "tee" | "mat" | "fairway" | "rough" | "sand" | "slope" | "net";
                    /** @enum {string} */
                    hand?: "right" | "left";
                    tally?: components["schemas"]["Tally"];
                    /** @enum {string} */
                    startLine?: "left" | "straight" | "right" | "cannot-see";
                    /** @enum {string} */
                    curve?: "left" | "none" | "right" | "cannot-see";
                    /** @enum {string} */
                    typical?: "usual" | "best" | "unsure";
                    clips?: {
                        /** Format: uuid */
                        id: string;
                        /** @enum {string} */
                        view?: "face-on" | "down-the-line";
                        /** @enum {string} */
                        swingLength?: "rehearsal" | "hip-high" | "three-quarter" | "full";
                    }[];
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    /** @description The version now. */
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Submission"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Changed since. */
            412: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description If-Match is missing. */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    addClip: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    /** Format: uuid */
                    clipId: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Submission"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readClip: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Clip"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readGripPhoto: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** Format: uuid */
                        id: string;
                        submissionId: string | null;
                        /** @enum {string} */
                        status: "uploading" | "uploaded" | "preparing" | "ready" | "refused" | "expired" | "erased";
                        refusal: {
                            code: string;
                            words: string;
                        } | null;
                        picture: {
                            widthPx: number;
                            heightPx: number;
                        } | null;
                        photo: string | null;
                        /** Format: date-time */
                        createdAt: string;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readGripPhotoOfSwing: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        photo: {
                            /** Format: uuid */
                            id: string;
                            submissionId: string | null;
                            /** @enum {string} */
                            status: "uploading" | "uploaded" | "preparing" | "ready" | "refused" | "expired" | "erased";
                            refusal: {
                                code: string;
                                words: string;
                            } | null;
                            picture: {
                                widthPx: number;
                                heightPx: number;
                            } | null;
                            photo: string | null;
                            /** Format: date-time */
                            createdAt: string;
                        } | null;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    putGripPhoto: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    /** Format: uuid */
                    photoId: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        photo: {
                            /** Format: uuid */
                            id: string;
                            submissionId: string | null;
                            /** @enum {string} */
                            status: "uploading" | "uploaded" | "preparing" | "ready" | "refused" | "expired" | "erased";
                            refusal: {
                                code: string;
                                words: string;
                            } | null;
                            picture: {
                                widthPx: number;
                                heightPx: number;
                            } | null;
                            photo: string | null;
                            /** Format: date-time */
                            createdAt: string;
                        };
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readInbox: {
        parameters: {
            query?: {
                after?: string;
                limit?: number;
                fault?: "solid" | "fat" | "thin" | "topped" | "heel" | "toe" | "shank" | "sky";
                claimed?: "nobody" | "me";
                kind?: "swing" | "pain" | "trial-ending" | "question" | "stuck";
                search?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["InboxItem"][];
                        next: string | null;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readInboxLoad: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        late: number;
                        dueToday: number;
                        coaches: number;
                        workingMinutesLeft: number;
                        canAnswer: number;
                        beyond: number;
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listCoaches: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: {
                            /** Format: uuid */
                            membershipId: string;
                            name: string;
                        }[];
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    claimNext: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    /** @default null */
                    fault?: ("solid" | "fat" | "thin" | "topped" | "heel" | "toe" | "shank" | "sky") | null;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        taken: {
                            /** @enum {string} */
                            kind: "swing" | "pain" | "trial-ending" | "question" | "stuck";
                            /** Format: uuid */
                            id: string;
                        } | null;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    claimSubmission: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Submission"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    releaseSubmission: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Submission"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    handOverSubmission: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    /** Format: uuid */
                    to: string;
                    why: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Submission"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    claimConcern: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** Format: uuid */
                        id: string;
                        /** @enum {string} */
                        kind: "pain" | "trial-ending" | "question" | "stuck";
                        /** Format: uuid */
                        studentId: string;
                        /** @enum {string} */
                        status: "waiting" | "closed";
                        claim: {
                            /** Format: uuid */
                            membershipId: string;
                            name: string;
                            /** Format: date-time */
                            expiresAt: string;
                            handed: {
                                by: string;
                                why: string;
                            } | null;
                        } | null;
                        outcome: ("spoke" | "wrote" | "no-need") | null;
                        version: number;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    releaseConcern: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** Format: uuid */
                        id: string;
                        /** @enum {string} */
                        kind: "pain" | "trial-ending" | "question" | "stuck";
                        /** Format: uuid */
                        studentId: string;
                        /** @enum {string} */
                        status: "waiting" | "closed";
                        claim: {
                            /** Format: uuid */
                            membershipId: string;
                            name: string;
                            /** Format: date-time */
                            expiresAt: string;
                            handed: {
                                by: string;
                                why: string;
                            } | null;
                        } | null;
                        outcome: ("spoke" | "wrote" | "no-need") | null;
                        version: number;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    closeConcern: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    /** @enum {string} */
                    outcome: "spoke" | "wrote" | "no-need";
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** Format: uuid */
                        id: string;
                        /** @enum {string} */
                        kind: "pain" | "trial-ending" | "question" | "stuck";
                        /** Format: uuid */
                        studentId: string;
                        /** @enum {string} */
                        status: "waiting" | "closed";
                        claim: {
                            /** Format: uuid */
                            membershipId: string;
                            name: string;
                            /** Format: date-time */
                            expiresAt: string;
                            handed: {
                                by: string;
                                why: string;
                            } | null;
                        } | null;
                        outcome: ("spoke" | "wrote" | "no-need") | null;
                        version: number;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    followLive: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/event-stream": {
                        /** Format: uuid */
                        id: string;
                        /** @enum {string} */
                        kind: "clip.prepared" | "submission.sent" | "submission.corrected" | "submission.claimed" | "submission.released" | "submission.handed-over" | "submission.lapsed" | "submission.pain-seen" | "submission.film-again" | "reply.sent" | "concern.raised" | "concern.claimed" | "concern.released" | "concern.closed";
                        ids: {
                            [key: string]: string;
                        };
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    acknowledgePain: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Submission"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    askToFilmAgain: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    /** @enum {string} */
                    reason: "club-out-of-picture" | "too-dark" | "camera-moves" | "wrong-angle" | "cut-short" | "too-far";
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Submission"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    openReview: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Review"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readMarks: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
                clipId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Marking"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    saveMarks: {
        parameters: {
            query?: never;
            header: {
                /** @description The version that was changed, in quotes: the ETag. */
                "If-Match": string;
            };
            path: {
                id: string;
                clipId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    marks: components["schemas"]["Mark"][];
                    observations: {
                        key: string;
                        /** @enum {string} */
                        answer: "yes" | "no" | "cannot-tell";
                    }[];
                    trail?: {
                        frame: number;
                        x: number;
                        y: number;
                    }[];
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    /** @description The version now. */
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        marking: components["schemas"]["Marking"];
                        evidence: components["schemas"]["Evidence"];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Changed since. */
            412: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description If-Match is missing. */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    measureMarks: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    setting: {
                        /** @enum {string} */
                        view: "face-on" | "down-the-line";
                        /** @enum {string} */
                        hand: "right" | "left";
                        /** @enum {string} */
                        club: "driver" | "fairway" | "hybrid" | "5-iron" | "6-iron" | "7-iron" | "8-iron" | "9-iron" | "wedge";
                        /** @enum {string} */
                        swingLength: "rehearsal" | "hip-high" | "three-quarter" | "full";
                    };
                    picture: {
                        widthPx: number;
                        heightPx: number;
                        frameTimesS: number[];
                    };
                    /** @enum {string} */
                    fault: "fat" | "thin" | "topped" | "slice" | "hook" | "push" | "pull" | "shank" | "heel" | "toe" | "sky";
                    marks: components["schemas"]["Mark"][];
                    observations: {
                        key: string;
                        /** @enum {string} */
                        answer: "yes" | "no" | "cannot-tell";
                    }[];
                    trail?: {
                        frame: number;
                        x: number;
                        y: number;
                    }[];
                    set?: {
                        lie: string;
                        setUp: string;
                        swings: {
                            clipId: string;
                            setUp: string;
                            /** @enum {string} */
                            swingLength: "rehearsal" | "hip-high" | "three-quarter" | "full";
                            arc: {
                                lowPointMm: number;
                                uOwnMm: number;
                                uTiltMm: number;
                                radiusMm: number;
                                uRadiusMm: number;
                                perRadius: number;
                            };
                        }[];
                        lineTestMm: number[] | null;
                        balls: {
                            fat: number;
                            of: number;
                        } | null;
                    };
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Evidence"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readStudentSet: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        lie: string;
                        setUp: string;
                        swings: {
                            clipId: string;
                            setUp: string;
                            /** @enum {string} */
                            swingLength: "rehearsal" | "hip-high" | "three-quarter" | "full";
                            arc: {
                                lowPointMm: number;
                                uOwnMm: number;
                                uTiltMm: number;
                                radiusMm: number;
                                uRadiusMm: number;
                                perRadius: number;
                            };
                        }[];
                        lineTestMm: number[] | null;
                        balls: {
                            fat: number;
                            of: number;
                        } | null;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readDiagnosis: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        chosen: components["schemas"]["ChosenDiagnosis"] | null;
                        evidence: {
                            /** @enum {string} */
                            fault: "fat" | "thin" | "topped" | "slice" | "hook" | "push" | "pull" | "shank" | "heel" | "toe" | "sky";
                            readings: components["schemas"]["Reading"][];
                            refusals: {
                                key: string;
                                words: string;
                            }[];
                            causes: components["schemas"]["RankedCause"][];
                            first: string | null;
                            next: {
                                /** @enum {string} */
                                kind: "mark" | "observation";
                                position: string | null;
                                point: string;
                            } | null;
                            fatRisk: ({
                                /** @constant */
                                kind: "told";
                                fat: number;
                                fatLow: number;
                                fatHigh: number;
                                thin: number;
                                missesGround: number;
                                goal: number;
                                forward: {
                                    byMm: number;
                                    lowMm: number;
                                    highMm: number;
                                    thin: number;
                                    missesGround: number;
                                };
                                higher: {
                                    byMm: number;
                                    lowMm: number;
                                    highMm: number;
                                    thin: number;
                                    missesGround: number;
                                };
                                lowPointMm: {
                                    value: number;
                                    u: number;
                                };
                                scatterMm: number;
                                depthMm: {
                                    value: number;
                                    u: number;
                                };
                                /** @enum {string} */
                                depthFrom: "line-test" | "balls";
                                radiusMm: {
                                    value: number;
                                    u: number;
                                };
                                swings: number;
                                setUps: number;
                                used: string[];
                                missing: string[];
                            } | {
                                /** @constant */
                                kind: "refused";
                                /** @enum {string} */
                                why: "driver" | "sand" | "no-swing" | "no-depth" | "do-not-fit";
                                words: string;
                            }) | null;
                            methodVersion: string;
                            /** Format: uuid */
                            clipId: string;
                        }[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    chooseDiagnosis: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    /** @enum {string} */
                    fault: "fat" | "thin" | "topped" | "slice" | "hook" | "push" | "pull" | "shank" | "heel" | "toe" | "sky";
                    cause: string;
                    setUpTicks: ("grip" | "handle" | "hips" | "ball")[];
                };
            };
        };
        responses: {
            /** @description Done. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChosenDiagnosis"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    showOrder: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @constant */
                        heldBack: false;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    saveReply: {
        parameters: {
            query?: never;
            header: {
                /** @description The version that was changed, in quotes: the ETag. */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    words: string;
                    cause: string | null;
                    setUpTicks: ("grip" | "handle" | "hips" | "ball")[];
                    frames: components["schemas"]["ReplyFrame"][];
                    plan: components["schemas"]["Plan"] | null;
                    moreCauses?: string[];
                    moreAgreed?: boolean;
                    teachingClip?: string | null;
                    withTalk?: boolean;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    /** @description The version now. */
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReplyDraft"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Changed since. */
            412: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description If-Match is missing. */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    sendReply: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReplyDraft"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    undoReply: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReplyDraft"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    correctReply: {
        parameters: {
            query?: never;
            header: {
                /** @description The version that was changed, in quotes: the ETag. */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    words: string;
                    teachingClip?: string | null;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    /** @description The version now. */
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReplyDraft"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Changed since. */
            412: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description If-Match is missing. */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listComparable: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: {
                            clip: components["schemas"]["Clip"];
                            /** @enum {string} */
                            from: "student" | "collection";
                            name: string | null;
                            /** Format: date-time */
                            sentAt: string;
                            /** @enum {string} */
                            club: "driver" | "fairway" | "hybrid" | "5-iron" | "6-iron" | "7-iron" | "8-iron" | "9-iron" | "wedge";
                            /** @enum {string} */
                            hand: "right" | "left";
                            balls: number;
                            solid: number;
                            last: boolean;
                            best: boolean;
                            marks: components["schemas"]["Mark"][];
                        }[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listModelSwings: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: {
                            /** Format: uuid */
                            clipId: string;
                            name: string;
                            player: string;
                            /** @enum {string} */
                            club: "driver" | "fairway" | "hybrid" | "5-iron" | "6-iron" | "7-iron" | "8-iron" | "9-iron" | "wedge";
                            /** @enum {string} */
                            view: "face-on" | "down-the-line";
                            permission: string;
                            /** Format: date */
                            permittedOn: string;
                            keptBy: string;
                            /** Format: date-time */
                            keptAt: string;
                            poster: string | null;
                        }[];
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    keepModelSwing: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    name: string;
                    permission: string;
                    /** Format: date */
                    permittedOn: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** Format: uuid */
                        clipId: string;
                        name: string;
                        player: string;
                        /** @enum {string} */
                        club: "driver" | "fairway" | "hybrid" | "5-iron" | "6-iron" | "7-iron" | "8-iron" | "9-iron" | "wedge";
                        /** @enum {string} */
                        view: "face-on" | "down-the-line";
                        permission: string;
                        /** Format: date */
                        permittedOn: string;
                        keptBy: string;
                        /** Format: date-time */
                        keptAt: string;
                        poster: string | null;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    endModelSwing: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readTalkThrough: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        talkThrough: {
                            /** Format: uuid */
                            id: string;
                            /** Format: uuid */
                            clipId: string;
                            by: string;
                            /** Format: date-time */
                            at: string;
                            durationMs: number;
                            sound: string;
                            track: {
                                atMs: number;
                                frame: number;
                                times: number;
                                x: number;
                                y: number;
                                point: {
                                    x: number;
                                    y: number;
                                } | null;
                            }[];
                            captions: {
                                atMs: number;
                                words: string;
                            }[];
                        } | null;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    saveTalkThrough: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    /** Format: uuid */
                    clipId: string;
                    durationMs: number;
                    /** Format: base64 */
                    sound: string;
                    track: {
                        atMs: number;
                        frame: number;
                        times: number;
                        x: number;
                        y: number;
                        point: {
                            x: number;
                            y: number;
                        } | null;
                    }[];
                    captions: {
                        atMs: number;
                        words: string;
                    }[];
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** Format: uuid */
                        id: string;
                        /** Format: uuid */
                        clipId: string;
                        by: string;
                        /** Format: date-time */
                        at: string;
                        durationMs: number;
                        sound: string;
                        track: {
                            atMs: number;
                            frame: number;
                            times: number;
                            x: number;
                            y: number;
                            point: {
                                x: number;
                                y: number;
                            } | null;
                        }[];
                        captions: {
                            atMs: number;
                            words: string;
                        }[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    dropTalkThrough: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    captionTalkThrough: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    captions: {
                        atMs: number;
                        words: string;
                    }[];
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** Format: uuid */
                        id: string;
                        /** Format: uuid */
                        clipId: string;
                        by: string;
                        /** Format: date-time */
                        at: string;
                        durationMs: number;
                        sound: string;
                        track: {
                            atMs: number;
                            frame: number;
                            times: number;
                            x: number;
                            y: number;
                            point: {
                                x: number;
                                y: number;
                            } | null;
                        }[];
                        captions: {
                            atMs: number;
                            words: string;
                        }[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readHome: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Home"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readReply: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StudentReply"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    markReplyRead: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    sayReplyRead: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** Format: date-time */
                        saidReadAt: string;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    askBack: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    words: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        thread: {
                            /** Format: uuid */
                            id: string;
                            /** @enum {string} */
                            voice: "student" | "coach";
                            name: string;
                            words: string;
                            /** Format: date-time */
                            at: string;
                        }[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    answerBack: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    words: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        thread: {
                            /** Format: uuid */
                            id: string;
                            /** @enum {string} */
                            voice: "student" | "coach";
                            name: string;
                            words: string;
                            /** Format: date-time */
                            at: string;
                        }[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readOwnTrial: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @enum {string} */
                        standing: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
                        day: number | null;
                        days: number;
                        endsAt: string | null;
                        priceWords: string;
                        moment: string | null;
                        first: {
                            /** Format: uuid */
                            submissionId: string;
                            /** Format: date-time */
                            sentAt: string;
                            tally: components["schemas"]["Tally"];
                            picture: {
                                rendition: string;
                                poster: string;
                                timeS: number;
                                widthPx: number;
                                heightPx: number;
                            } | null;
                        } | null;
                        latest: {
                            /** Format: uuid */
                            submissionId: string;
                            /** Format: date-time */
                            sentAt: string;
                            tally: components["schemas"]["Tally"];
                            picture: {
                                rendition: string;
                                poster: string;
                                timeS: number;
                                widthPx: number;
                                heightPx: number;
                            } | null;
                        } | null;
                        replies: number;
                        practiceEntries: number;
                        rungsPassed: number;
                        joinAskedAt: string | null;
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    askToJoin: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @enum {string} */
                        standing: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
                        day: number | null;
                        days: number;
                        endsAt: string | null;
                        priceWords: string;
                        moment: string | null;
                        first: {
                            /** Format: uuid */
                            submissionId: string;
                            /** Format: date-time */
                            sentAt: string;
                            tally: components["schemas"]["Tally"];
                            picture: {
                                rendition: string;
                                poster: string;
                                timeS: number;
                                widthPx: number;
                                heightPx: number;
                            } | null;
                        } | null;
                        latest: {
                            /** Format: uuid */
                            submissionId: string;
                            /** Format: date-time */
                            sentAt: string;
                            tally: components["schemas"]["Tally"];
                            picture: {
                                rendition: string;
                                poster: string;
                                timeS: number;
                                widthPx: number;
                                heightPx: number;
                            } | null;
                        } | null;
                        replies: number;
                        practiceEntries: number;
                        rungsPassed: number;
                        joinAskedAt: string | null;
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readProgramme: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Programme"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    logPractice: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    drillId?: string;
                    rung: string;
                    balls: number;
                    clean: number;
                    filmed: boolean;
                    /** @enum {string} */
                    pain: "none" | "new" | "worse";
                };
            };
        };
        responses: {
            /** @description Done. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        entry: components["schemas"]["Entry"];
                        programme: components["schemas"]["Programme"];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listStudents: {
        parameters: {
            query?: {
                after?: string;
                limit?: number;
                standing?: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["StudentRow"][];
                        next: string | null;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readStudent: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StudentDetail"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    changeStanding: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    /** @enum {string} */
                    to: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
                    reason: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StudentDetail"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    extendTrial: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    days: number;
                    reason: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StudentDetail"];
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readAbout: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        student: {
                            /** Format: uuid */
                            id: string;
                            name: string;
                            /** @enum {string} */
                            hand: "right" | "left";
                            /** @enum {string} */
                            ageGroup: "adult" | "junior" | "senior";
                            /** @enum {string} */
                            units: "metric" | "imperial";
                        };
                        means: {
                            usualMiss: ("fat" | "thin" | "topped" | "heel" | "toe" | "shank" | "sky") | null;
                            daysPerWeek: number | null;
                            minutesPerDay: number | null;
                            place: ("mat" | "grass" | "home") | null;
                            goal: string | null;
                            body: string | null;
                            bodyAgreed: boolean;
                            balls: number | null;
                            equipment: ("club" | "balls" | "soft-balls" | "towel" | "tape" | "rug" | "mirror" | "cushion" | "bag" | "stick" | "tees" | "pen" | "phone" | "slope")[];
                            pains: ("low-back-pain" | "wrist-pain" | "elbow-pain" | "hip-pain" | "knee-pain" | "shoulder-pain" | "neck-pain")[];
                        };
                        note: {
                            words: string;
                            version: number;
                            by: string | null;
                            at: string | null;
                        };
                        last: {
                            cause: string;
                            drill: string;
                            rung: string;
                            /** @enum {string} */
                            status: "open" | "held" | "done" | "replaced";
                            /** Format: date-time */
                            since: string;
                            entries: number;
                            balls: number;
                            clean: number;
                            second: {
                                drill: string;
                                rung: string | null;
                                entries: number;
                                balls: number;
                                clean: number;
                            } | null;
                        } | null;
                        progress: {
                            /** @enum {string} */
                            verdict: "better" | "no-clear-change" | "worse" | "over-correcting";
                            words: string;
                            balls: string | null;
                            basis: string;
                            /** Format: date-time */
                            since: string;
                            /** Format: date-time */
                            latest: string;
                        } | null;
                        lineTest: {
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** Format: date */
                            localDate: string;
                            by: string;
                            startsMm: number[];
                            behind: number;
                            meanStartMm: number;
                            sdMm: number;
                            lowMm: number;
                            highMm: number;
                        } | null;
                        timeline: ({
                            /** @constant */
                            kind: "standing";
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** @enum {string} */
                            to: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
                            reason: string;
                        } | {
                            /** @constant */
                            kind: "swing";
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** @enum {string} */
                            club: "driver" | "fairway" | "hybrid" | "5-iron" | "6-iron" | "7-iron" | "8-iron" | "9-iron" | "wedge";
                            fault: ("solid" | "fat" | "thin" | "topped" | "heel" | "toe" | "shank" | "sky") | null;
                            /** @enum {string} */
                            status: "preparing" | "needs-clip" | "waiting" | "answered" | "film-again" | "withdrawn";
                            /** @enum {string} */
                            pain: "none" | "new" | "worse";
                            words: string;
                        } | {
                            /** @constant */
                            kind: "reply";
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** Format: uuid */
                            submissionId: string;
                            by: string;
                            cause: string | null;
                            read: boolean;
                            saidReadAt: string | null;
                        } | {
                            /** @constant */
                            kind: "programme";
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            cause: string;
                            drill: string;
                        } | {
                            /** @constant */
                            kind: "entry";
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            drill: string;
                            rung: string;
                            balls: number;
                            clean: number;
                            /** @enum {string} */
                            verdict: "passed" | "stay" | "back" | "hold";
                            /** @enum {string} */
                            pain: "none" | "new" | "worse";
                        } | {
                            /** @constant */
                            kind: "question";
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** Format: uuid */
                            replyId: string;
                            /** @enum {string} */
                            voice: "student" | "coach";
                            words: string;
                        } | {
                            /** @constant */
                            kind: "lesson";
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** Format: date */
                            localDate: string;
                            by: string;
                            words: string;
                        } | {
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** Format: date */
                            localDate: string;
                            by: string;
                            startsMm: number[];
                            behind: number;
                            meanStartMm: number;
                            sdMm: number;
                            lowMm: number;
                            highMm: number;
                            /** @constant */
                            kind: "line-test";
                        })[];
                        older: boolean;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    saveCoachNote: {
        parameters: {
            query?: never;
            header: {
                /** @description The version that was changed, in quotes: the ETag. */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    words: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    /** @description The version now. */
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        words: string;
                        version: number;
                        by: string | null;
                        at: string | null;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Changed since. */
            412: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description If-Match is missing. */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    noteLesson: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    /** Format: date */
                    localDate: string;
                    words: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        student: {
                            /** Format: uuid */
                            id: string;
                            name: string;
                            /** @enum {string} */
                            hand: "right" | "left";
                            /** @enum {string} */
                            ageGroup: "adult" | "junior" | "senior";
                            /** @enum {string} */
                            units: "metric" | "imperial";
                        };
                        means: {
                            usualMiss: ("fat" | "thin" | "topped" | "heel" | "toe" | "shank" | "sky") | null;
                            daysPerWeek: number | null;
                            minutesPerDay: number | null;
                            place: ("mat" | "grass" | "home") | null;
                            goal: string | null;
                            body: string | null;
                            bodyAgreed: boolean;
                            balls: number | null;
                            equipment: ("club" | "balls" | "soft-balls" | "towel" | "tape" | "rug" | "mirror" | "cushion" | "bag" | "stick" | "tees" | "pen" | "phone" | "slope")[];
                            pains: ("low-back-pain" | "wrist-pain" | "elbow-pain" | "hip-pain" | "knee-pain" | "shoulder-pain" | "neck-pain")[];
                        };
                        note: {
                            words: string;
                            version: number;
                            by: string | null;
                            at: string | null;
                        };
                        last: {
                            cause: string;
                            drill: string;
                            rung: string;
                            /** @enum {string} */
                            status: "open" | "held" | "done" | "replaced";
                            /** Format: date-time */
                            since: string;
                            entries: number;
                            balls: number;
                            clean: number;
                            second: {
                                drill: string;
                                rung: string | null;
                                entries: number;
                                balls: number;
                                clean: number;
                            } | null;
                        } | null;
                        progress: {
                            /** @enum {string} */
                            verdict: "better" | "no-clear-change" | "worse" | "over-correcting";
                            words: string;
                            balls: string | null;
                            basis: string;
                            /** Format: date-time */
                            since: string;
                            /** Format: date-time */
                            latest: string;
                        } | null;
                        lineTest: {
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** Format: date */
                            localDate: string;
                            by: string;
                            startsMm: number[];
                            behind: number;
                            meanStartMm: number;
                            sdMm: number;
                            lowMm: number;
                            highMm: number;
                        } | null;
                        timeline: ({
                            /** @constant */
                            kind: "standing";
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** @enum {string} */
                            to: "invited" | "trial" | "lapsed" | "paid" | "paused" | "left";
                            reason: string;
                        } | {
                            /** @constant */
                            kind: "swing";
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** @enum {string} */
                            club: "driver" | "fairway" | "hybrid" | "5-iron" | "6-iron" | "7-iron" | "8-iron" | "9-iron" | "wedge";
                            fault: ("solid" | "fat" | "thin" | "topped" | "heel" | "toe" | "shank" | "sky") | null;
                            /** @enum {string} */
                            status: "preparing" | "needs-clip" | "waiting" | "answered" | "film-again" | "withdrawn";
                            /** @enum {string} */
                            pain: "none" | "new" | "worse";
                            words: string;
                        } | {
                            /** @constant */
                            kind: "reply";
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** Format: uuid */
                            submissionId: string;
                            by: string;
                            cause: string | null;
                            read: boolean;
                            saidReadAt: string | null;
                        } | {
                            /** @constant */
                            kind: "programme";
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            cause: string;
                            drill: string;
                        } | {
                            /** @constant */
                            kind: "entry";
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            drill: string;
                            rung: string;
                            balls: number;
                            clean: number;
                            /** @enum {string} */
                            verdict: "passed" | "stay" | "back" | "hold";
                            /** @enum {string} */
                            pain: "none" | "new" | "worse";
                        } | {
                            /** @constant */
                            kind: "question";
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** Format: uuid */
                            replyId: string;
                            /** @enum {string} */
                            voice: "student" | "coach";
                            words: string;
                        } | {
                            /** @constant */
                            kind: "lesson";
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** Format: date */
                            localDate: string;
                            by: string;
                            words: string;
                        } | {
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** Format: date */
                            localDate: string;
                            by: string;
                            startsMm: number[];
                            behind: number;
                            meanStartMm: number;
                            sdMm: number;
                            lowMm: number;
                            highMm: number;
                            /** @constant */
                            kind: "line-test";
                        })[];
                        older: boolean;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listLineTests: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @enum {string} */
                        units: "metric" | "imperial";
                        items: {
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** Format: date */
                            localDate: string;
                            by: string;
                            startsMm: number[];
                            behind: number;
                            meanStartMm: number;
                            sdMm: number;
                            lowMm: number;
                            highMm: number;
                        }[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    noteLineTest: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    startsMm: number[];
                };
            };
        };
        responses: {
            /** @description Done. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** @enum {string} */
                        units: "metric" | "imperial";
                        items: {
                            /** Format: uuid */
                            id: string;
                            /** Format: date-time */
                            at: string;
                            /** Format: date */
                            localDate: string;
                            by: string;
                            startsMm: number[];
                            behind: number;
                            meanStartMm: number;
                            sdMm: number;
                            lowMm: number;
                            highMm: number;
                        }[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readThenAndNow: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        pair: {
                            /** @enum {string} */
                            moment: "address" | "shaft-parallel-back" | "lead-arm-parallel-back" | "top" | "lead-arm-parallel-down" | "shaft-parallel-down" | "impact" | "shaft-parallel-through" | "finish";
                            first: {
                                /** Format: uuid */
                                submissionId: string;
                                /** Format: date-time */
                                sentAt: string;
                                tally: components["schemas"]["Tally"];
                                picture: {
                                    rendition: string;
                                    poster: string;
                                    timeS: number;
                                    widthPx: number;
                                    heightPx: number;
                                } | null;
                            };
                            latest: {
                                /** Format: uuid */
                                submissionId: string;
                                /** Format: date-time */
                                sentAt: string;
                                tally: components["schemas"]["Tally"];
                                picture: {
                                    rendition: string;
                                    poster: string;
                                    timeS: number;
                                    widthPx: number;
                                    heightPx: number;
                                } | null;
                            };
                        } | null;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readFaultsLately: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        week: {
                            days: number;
                            swings: number;
                            faultStudents: number;
                            causeStudents: number;
                            faults: {
                                id: string;
                                name: string;
                                swings: number;
                                students: number;
                                share: {
                                    share: number;
                                    low: number;
                                    high: number;
                                };
                                change: ("more" | "less" | "no-clear-change") | null;
                            }[];
                            causes: {
                                id: string;
                                name: string;
                                swings: number;
                                students: number;
                                share: {
                                    share: number;
                                    low: number;
                                    high: number;
                                };
                                change: ("more" | "less" | "no-clear-change") | null;
                            }[];
                        };
                        month: {
                            days: number;
                            swings: number;
                            faultStudents: number;
                            causeStudents: number;
                            faults: {
                                id: string;
                                name: string;
                                swings: number;
                                students: number;
                                share: {
                                    share: number;
                                    low: number;
                                    high: number;
                                };
                                change: ("more" | "less" | "no-clear-change") | null;
                            }[];
                            causes: {
                                id: string;
                                name: string;
                                swings: number;
                                students: number;
                                share: {
                                    share: number;
                                    low: number;
                                    high: number;
                                };
                                change: ("more" | "less" | "no-clear-change") | null;
                            }[];
                        };
                        teachNext: {
                            cause: string;
                            name: string;
                            students: number;
                            of: number;
                            days: number;
                            say: string;
                            drills: {
                                id: string;
                                name: string;
                                purpose: string;
                            }[];
                            cautions: string[];
                        } | null;
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listTeachingClips: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: {
                            cause: string;
                            causeName: string;
                            title: string;
                            url: string;
                            words: string;
                            by: string;
                            /** Format: date-time */
                            at: string;
                        }[];
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    keepTeachingClip: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                cause: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    title: string;
                    url: string;
                    words: string;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: {
                            cause: string;
                            causeName: string;
                            title: string;
                            url: string;
                            words: string;
                            by: string;
                            /** Format: date-time */
                            at: string;
                        }[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    removeTeachingClip: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                cause: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: {
                            cause: string;
                            causeName: string;
                            title: string;
                            url: string;
                            words: string;
                            by: string;
                            /** Format: date-time */
                            at: string;
                        }[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readTrials: {
        parameters: {
            query?: {
                after?: string;
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["TrialRow"][];
                        next: string | null;
                        incidence: {
                            trials: number;
                            open: number;
                            share: number;
                            low: number;
                            high: number;
                            steps: {
                                day: number;
                                share: number;
                                low: number;
                                high: number;
                            }[];
                        } | null;
                        matured: {
                            trials: number;
                            paid: number;
                            share: number | null;
                            low: number | null;
                            high: number | null;
                        };
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listMail: {
        parameters: {
            query?: {
                after?: string;
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: components["schemas"]["MailRow"][];
                        next: string | null;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listDrills: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: {
                            id: string;
                            name: string;
                            purpose: string;
                            causes: string[];
                            places: string[];
                            minutes: number;
                            cautions: string[];
                        }[];
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    offerProgramme: {
        parameters: {
            query?: {
                cause?: string;
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        cause: string;
                        plan: components["schemas"]["Plan"] | null;
                        drillName: string | null;
                        secondName: string | null;
                        ballsAtMost: number | null;
                        session: {
                            daysPerWeek: number | null;
                            minutes: number;
                            blocks: number[];
                            restSeconds: number;
                            filmOneOf: number;
                            mixed: boolean;
                            heavy: boolean;
                            words: string[];
                        } | null;
                        means: string;
                        leftOut: {
                            what: string;
                            why: string;
                        }[];
                        cautions: string[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listPhrases: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: {
                            id: string;
                            about: string;
                            text: string;
                            /** @enum {string} */
                            whose: "library" | "academy" | "own";
                            causes: string[];
                            /** @enum {string} */
                            kind: "shows" | "why" | "unseen" | "praise" | "plain";
                            when: {
                                key: string;
                                /** @enum {string} */
                                side: "below" | "above" | "within";
                            } | null;
                            seen: {
                                key: string;
                                /** @enum {string} */
                                answer: "yes" | "no";
                            } | null;
                            faults: ("fat" | "thin" | "topped" | "slice" | "hook" | "push" | "pull" | "shank" | "heel" | "toe" | "sky")[];
                            views: ("face-on" | "down-the-line")[];
                        }[];
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    savePhrase: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    about: string;
                    text: string;
                    /** @enum {string} */
                    whose: "own" | "academy";
                };
            };
        };
        responses: {
            /** @description Done. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        id: string;
                        about: string;
                        text: string;
                        /** @enum {string} */
                        whose: "library" | "academy" | "own";
                        causes: string[];
                        /** @enum {string} */
                        kind: "shows" | "why" | "unseen" | "praise" | "plain";
                        when: {
                            key: string;
                            /** @enum {string} */
                            side: "below" | "above" | "within";
                        } | null;
                        seen: {
                            key: string;
                            /** @enum {string} */
                            answer: "yes" | "no";
                        } | null;
                        faults: ("fat" | "thin" | "topped" | "slice" | "hook" | "push" | "pull" | "shank" | "heel" | "toe" | "sky")[];
                        views: ("face-on" | "down-the-line")[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    removePhrase: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    keepStartingPoint: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** Format: uuid */
                        id: string;
                        cause: string;
                        words: string;
                        setUpTicks: ("grip" | "handle" | "hips" | "ball")[];
                        plan: components["schemas"]["Plan"] | null;
                        by: string;
                        /** Format: date-time */
                        at: string;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listStartingPoints: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: {
                            /** Format: uuid */
                            id: string;
                            cause: string;
                            words: string;
                            setUpTicks: ("grip" | "handle" | "hips" | "ball")[];
                            plan: components["schemas"]["Plan"] | null;
                            by: string;
                            /** Format: date-time */
                            at: string;
                        }[];
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    removeStartingPoint: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    stopReminders: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                token: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readReminders: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        reminders: boolean;
                        quiet: {
                            from: string;
                            to: string;
                        } | null;
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    chooseReminders: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    reminders: boolean;
                    quiet?: {
                        from: string;
                        to: string;
                    } | null;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        reminders: boolean;
                        quiet: {
                            from: string;
                            to: string;
                        } | null;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readReminderRules: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: {
                            /** @enum {string} */
                            kind: "trial-ending" | "check-in-reminder" | "film-again" | "reply-unread" | "first-swing" | "practice";
                            on: boolean;
                        }[];
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    setReminderRule: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                kind: "trial-ending" | "check-in-reminder" | "film-again" | "reply-unread" | "first-swing" | "practice";
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    on: boolean;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        items: {
                            /** @enum {string} */
                            kind: "trial-ending" | "check-in-reminder" | "film-again" | "reply-unread" | "first-swing" | "practice";
                            on: boolean;
                        }[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readLearning: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        on: boolean;
                        since: string | null;
                        resetAt: string | null;
                        oneIn: number;
                        blind: number;
                        overruled: number;
                        faults: {
                            /** @enum {string} */
                            fault: "fat" | "thin" | "topped" | "slice" | "hook" | "push" | "pull" | "shank" | "heel" | "toe" | "sky";
                            swings: number;
                            causes: {
                                causeId: string;
                                name: string;
                                chosen: number;
                                seen: number;
                                expected: number;
                                libraryRate: number;
                                rate: number;
                            }[];
                        }[];
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    setLearning: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    on: boolean;
                };
            };
        };
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        on: boolean;
                        since: string | null;
                        resetAt: string | null;
                        oneIn: number;
                        blind: number;
                        overruled: number;
                        faults: {
                            /** @enum {string} */
                            fault: "fat" | "thin" | "topped" | "slice" | "hook" | "push" | "pull" | "shank" | "heel" | "toe" | "sky";
                            swings: number;
                            causes: {
                                causeId: string;
                                name: string;
                                chosen: number;
                                seen: number;
                                expected: number;
                                libraryRate: number;
                                rate: number;
                            }[];
                        }[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    resetLearning: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        on: boolean;
                        since: string | null;
                        resetAt: string | null;
                        oneIn: number;
                        blind: number;
                        overruled: number;
                        faults: {
                            /** @enum {string} */
                            fault: "fat" | "thin" | "topped" | "slice" | "hook" | "push" | "pull" | "shank" | "heel" | "toe" | "sky";
                            swings: number;
                            causes: {
                                causeId: string;
                                name: string;
                                chosen: number;
                                seen: number;
                                expected: number;
                                libraryRate: number;
                                rate: number;
                            }[];
                        }[];
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readCoaches: {
        parameters: {
            query?: {
                days?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        days: number;
                        waiting: number;
                        late: number;
                        oldestSentAt: string | null;
                        promiseHours: number;
                        filmAgain: {
                            share: number;
                            low: number;
                            high: number;
                        } | null;
                        all: {
                            answered: number;
                            hoursHalf: number | null;
                            hoursMost: number | null;
                            kept: {
                                share: number;
                                low: number;
                                high: number;
                            } | null;
                        };
                        items: {
                            /** Format: uuid */
                            id: string;
                            name: string;
                            /** @enum {string} */
                            role: "coach" | "manager";
                            claimed: number;
                            answered: number;
                            hoursHalf: number | null;
                            hoursMost: number | null;
                            kept: {
                                share: number;
                                low: number;
                                high: number;
                            } | null;
                        }[];
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listStaff: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        members: {
                            /** Format: uuid */
                            id: string;
                            name: string;
                            email: string;
                            /** @enum {string} */
                            role: "coach" | "manager";
                            /** Format: date-time */
                            since: string;
                        }[];
                        invitations: {
                            /** Format: uuid */
                            id: string;
                            name: string;
                            email: string;
                            /** @enum {string} */
                            role: "coach" | "manager";
                            by: string;
                            /** Format: date-time */
                            createdAt: string;
                            /** Format: date-time */
                            expiresAt: string;
                            expired: boolean;
                        }[];
                    };
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    inviteStaff: {
        parameters: {
            query?: never;
            header: {
                /** @description A fresh UUID for each thing made; the same when retried. */
                "Idempotency-Key": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": {
                    name: string;
                    /** Format: email */
                    email: string;
                    /** @enum {string} */
                    role: "coach" | "manager";
                };
            };
        };
        responses: {
            /** @description Done. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        /** Format: uuid */
                        id: string;
                        name: string;
                        email: string;
                        /** @enum {string} */
                        role: "coach" | "manager";
                        by: string;
                        /** Format: date-time */
                        createdAt: string;
                        /** Format: date-time */
                        expiresAt: string;
                        expired: boolean;
                    };
                };
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    revokeInvitation: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    endStaff: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Not in the right form. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Signed out. */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not for this role. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Nothing here for you. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem; `code` says which. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
}
