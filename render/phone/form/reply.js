function replyText () { return 'reply' }
