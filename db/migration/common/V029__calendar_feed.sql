-- The private address under which an account's work is fetched as a calendar; only the digest of
-- its secret is kept, and a new address ends the one before.

create table calendar_feed (
  account_id uuid primary key references account on delete cascade,
  digest     varchar(64) not null unique,
  made_at    timestamp(6) with time zone not null
);
