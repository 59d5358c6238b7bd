-- What every record leans on: the numbered revisions of hand-edited master data,
-- and the keys of the forms that have already been stored.

create sequence revision_seq increment by 1;

create table revision (
  id       bigint primary key,
  at       timestamp(6) with time zone not null,
  username varchar(60) not null
);

-- A form carries a one-time key; the key is inserted first, in the form's own transaction,
-- so that a form sent twice is stored once.
create table submission (
  form_key uuid primary key,
  username varchar(60) not null,
  at       timestamp(6) with time zone not null
);
